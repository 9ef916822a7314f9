package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static workuptally.tally.suspects.TypedCells.entry;
import static workuptally.tally.suspects.TypedCells.row;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.model.Place;
import workuptally.model.RowPlace;
import workuptally.tally.suspects.Entry.Sort;

/** Two volumes that must add up to 60 mL, give or take 2, of which the second must be 35. */
class SlipSearchTest {
    private static final RowPlace FIRST = row("layers", 2);
    private static final RowPlace SECOND = row("layers", 7);
    private static final double SETTLED = 2;

    private static Map<String, Check> checks(double first, double second) {
        Map<String, Check> all = new LinkedHashMap<>();
        all.put("second", new Check("second", second - 35, -2, 2, 1));
        all.put("sum", new Check("sum", first + second - 60, -2, 2, 1));
        return all;
    }

    private static double read(Changes changes, Entry entry) {
        return changes.at(entry.row(), "Volume", entry.number())
                .entered()
                .orElseThrow()
                .value();
    }

    private static SlipSearch search(Entry first, Entry second) {
        Function<Changes, Map<String, Check>> after = c -> checks(read(c, first), read(c, second));
        return new SlipSearch(checks(first.number().value(), second.number().value()), SETTLED, after, after);
    }

    private static List<Suspect> list(SlipSearch search, List<Hypothesis> ofWords, Entry... entries) {
        Book book = SmallBook.empty().book();
        TareRegister register = new TareRegister(List.of());
        EntryChecks checks = new EntryChecks(book, SmallBook.substances(), register);
        return search.list(
                List.of(entries),
                new Slips(e -> "", List.of(entries), register, checks, SmallBook.substances()),
                ofWords);
    }

    private static List<Suspect> list(String first, String second) {
        Entry one = entry(Sort.VOLUME, first, FIRST, "Volume");
        Entry other = entry(Sort.VOLUME, second, SECOND, "Volume");
        return list(search(one, other), List.of(), one, other);
    }

    @Test
    void entriesThatAgreeNameNone() {
        assertEquals(List.of(), list("25.0", "35.0"));
        // 2.6 standard uncertainties need no explanation
        assertEquals(
                List.of(),
                search(entry(Sort.VOLUME, "29.6", FIRST, "Volume"), entry(Sort.VOLUME, "35.0", SECOND, "Volume"))
                        .offNames());
    }

    @Test
    void theNumberThatSettlesEverythingIsNamed() {
        List<Suspect> found = list("250", "35.0");
        assertEquals(1, found.size());
        Suspect suspect = found.get(0);
        assertEquals("layers.csv line 2, Volume", suspect.place().inWords());
        assertEquals(List.of(), suspect.together());
        assertEquals("250", suspect.typed());
        assertEquals("25", suspect.suggested());
        assertEquals(UsualSlip.DECIMAL_POINT, suspect.slip());
        assertEquals(List.of("sum"), suspect.explains());
        // 225 over 2 of 1: 223²
        assertEquals(223 * 223, suspect.chiSquareBefore().orElseThrow(), 1e-6);
        assertEquals(0, suspect.chiSquareAfter().orElseThrow(), 1e-9);
        assertEquals(2, suspect.degreesOfFreedom());
    }

    @Test
    void aNumberThatTwoChecksAccuseIsNamedAndExplainsBoth() {
        List<Suspect> found = list("25.0", "53.0");
        assertEquals("layers.csv line 7, Volume", found.get(0).place().inWords());
        assertEquals("35.0", found.get(0).suggested());
        assertEquals(List.of("second", "sum"), found.get(0).explains());
    }

    @Test
    void aNumberThatLeavesAnythingOffSettlesNothing() {
        // of 29.5 and 53.0 the second is wrong, and with 35.0 the sum is still 4.5 too large: off by 2.5
        assertEquals(List.of(), list("29.5", "53.0"));
        assertEquals(1, list("29.0", "53.0").size());
    }

    @Test
    void namesOfWhatIsOffStandByHowMuch() {
        SlipSearch search =
                search(entry(Sort.VOLUME, "10.0", FIRST, "Volume"), entry(Sort.VOLUME, "80.0", SECOND, "Volume"));
        assertEquals(List.of("second", "sum"), search.offNames());
        SlipSearch other =
                search(entry(Sort.VOLUME, "90.0", FIRST, "Volume"), entry(Sort.VOLUME, "20.0", SECOND, "Volume"));
        assertEquals(List.of("sum", "second"), other.offNames());
        SlipSearch within =
                search(entry(Sort.VOLUME, "4.0", FIRST, "Volume"), entry(Sort.VOLUME, "56.0", SECOND, "Volume"));
        assertEquals(List.of("second"), within.offNames());
        assertEquals(
                List.of("second"), List.copyOf(SlipSearch.off(checks(4, 56)).keySet()));
    }

    @Test
    void aSmallGapIsExplainedByChance() {
        // 62.7 for 60: off by 0.7, 20.7 would fit too, but chi-square falls by 0.49 only
        assertEquals(List.of(), list("27.7", "35.0"));
        // off by 5.2 of chi-square 27
        assertEquals("23.2", list("32.2", "35.0").get(0).suggested());
    }

    @Test
    void twoNumbersInEachOthersCellsAreNamedTogether() {
        RowPlace below = row("layers", 3);
        Entry one = entry(Sort.VOLUME, "35.5", FIRST, "Volume");
        Entry other = entry(Sort.VOLUME, "24.9", below, "Volume");
        Suspect suspect = list(search(one, other), List.of(), one, other).get(0);
        assertEquals(UsualSlip.CELLS_SWAPPED, suspect.slip());
        assertEquals("layers.csv line 2, Volume", suspect.place().inWords());
        assertEquals(
                List.of("layers.csv line 3, Volume"),
                suspect.together().stream().map(Place::inWords).toList());
    }

    /** A row that is left out takes 40 off the first volume. */
    private static List<Suspect> withWords(UsualSlip slip, Map<String, Check> after) {
        Entry first = entry(Sort.VOLUME, "65.0", FIRST, "Volume");
        Entry second = entry(Sort.VOLUME, "35.0", SECOND, "Volume");
        Changes words = Changes.without("A2");
        Function<Changes, Map<String, Check>> checks =
                c -> c == words ? new LinkedHashMap<>(after) : checks(read(c, first), read(c, second));
        SlipSearch search = new SlipSearch(checks(65, 35), SETTLED, checks, checks);
        Hypothesis twice = new Hypothesis(
                words, slip, List.of(row("layers", 4).at("Layer")), row("layers", 4), "layer A2", "A2", "");
        return list(search, List.of(twice), first, second);
    }

    @Test
    void wordsMayBeBehindItAsWell() {
        Suspect suspect =
                withWords(UsualSlip.MILLILITRES_FOR_GRAMS, checks(25, 35)).get(0);
        assertEquals("layers.csv line 4, Layer", suspect.place().inWords());
        assertEquals(38 * 38, suspect.chiSquareBefore().orElseThrow(), 1e-6);
    }

    @Test
    void wordsThatTakeACheckAwaySettleItOnlyWhereARowIsOneTooMany() {
        Map<String, Check> without = checks(25, 35);
        without.remove("second");
        assertEquals(List.of(), withWords(UsualSlip.MILLILITRES_FOR_GRAMS, without));
        assertEquals(1, withWords(UsualSlip.COUNTED_TWICE, without).size());
        assertEquals(1, withWords(UsualSlip.LABELS_SWAPPED, without).size());
    }

    @Test
    void aFormThatItsNameSpeaksOfNeedsNoSlipBesideIt() {
        Entry first = entry(Sort.VOLUME, "250", FIRST, "Volume");
        Entry second = entry(Sort.VOLUME, "35.0", SECOND, "Volume");
        Changes form = Changes.ofForm(row("products", 2), "C7H10ClN", List.of());
        Function<Changes, Map<String, Check>> checks =
                c -> c.formula().isPresent() ? checks(26.9, 35) : checks(read(c, first), read(c, second));
        SlipSearch search = new SlipSearch(checks(250, 35), SETTLED, checks, checks);
        Hypothesis salt = new Hypothesis(
                form,
                UsualSlip.SALT_FOR_BASE,
                List.of(row("products", 2).at("Formula")),
                row("products", 2),
                "",
                "C7H9N",
                "C7H10ClN");
        List<Suspect> found = list(search, List.of(salt), first, second);
        assertEquals(
                List.of(UsualSlip.SALT_FOR_BASE),
                found.stream().map(Suspect::slip).toList());
        assertEquals(
                Optional.of("C7H10ClN"), found.stream().map(Suspect::suggested).findFirst());
    }

    @Test
    void ofTwoCellsThatWouldSettleItTheLikelierStandsFirst() {
        // the first by two digits swapped, or the second by its point; nothing else says which
        Entry first = entry(Sort.VOLUME, "41.0", FIRST, "Volume");
        Entry second = entry(Sort.VOLUME, "28.0", SECOND, "Volume");
        Function<Changes, Map<String, Check>> after =
                c -> Map.of("sum", new Check("sum", read(c, first) + read(c, second) - 42.0, -4, 4, 1.5));
        SlipSearch search = new SlipSearch(Map.of("sum", new Check("sum", 27, -4, 4, 1.5)), SETTLED, after, after);
        List<Suspect> found = list(search, List.of(), first, second);
        // 41.0 and 2.80 are 43.8, 14.0 and 28.0 are 42.0: (1.8/4.27)² + 2 ln 2 = 1.56 against 1 + 2 ln 2 = 2.39
        assertEquals(
                List.of("2.80", "14.0"), found.stream().map(Suspect::suggested).toList());
        assertTrue(found.get(0).place().inWords().contains("line 7"));
    }
}
