package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.model.EarlierContent;
import workuptally.tally.amounts.Content;

/** What A1 of a series held in earlier batches; theory 20.0 g. */
class ExperienceTest {
    private static final List<String> FIVE = List.of("0.20", "0.25", "0.30", "0.35", "0.40");

    private static SmallBook book(List<String> percents) {
        SmallBook book = SmallBook.reaction()
                .but("runs", "Series", "S-1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "50", "Net", "50", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "19.00", "Assay", "100")
                .but("isolated", "Identity by", "NMR");
        percents.forEach(p -> book.history("Series", "s-1", "Layer", "A1", "Content", p));
        return book;
    }

    private static Optional<Experience.Bound> bound(Book book) {
        return Experience.of(book).bound(book.runs().get(0), "A1", "P");
    }

    private static Content a1(SmallBook book) {
        return book.reviewOfRun().tally().layer("A1").orElseThrow().contents().get(0);
    }

    @Test
    void isTheToleranceLimitOfFiveBatches() {
        // mean 0.30, s = 0.0790569; k(5; 0.95; 0.95) = 4.203 (tables of one-sided normal tolerance factors, as in ISO
        // 16269-6)
        Experience.Bound bound = bound(book(FIVE).book()).orElseThrow();
        assertEquals(0.30 + 4.203 * 0.0790569, bound.percentOfTheory(), 1e-4);
        assertEquals(5, bound.batches());
        assertFalse(bound.normalityDoubted());
        assertFalse(bound.counts());
    }

    @Test
    void fourBatchesAreTooFew() {
        assertTrue(bound(book(FIVE.subList(0, 4)).book()).isEmpty());
    }

    @Test
    void whatLiesBelowALimitCountsAsTheWorseOfNothingAndTheLimit() {
        // <0.30 for the middle one: at 0 the values 0.20 0.25 0 0.35 0.40 scatter more, mean 0.24, s = 0.155724
        Experience.Bound bound = bound(
                        book(List.of("0.20", "0.25", "<0.30", "0.35", "0.40")).book())
                .orElseThrow();
        assertEquals(0.24 + 4.203 * 0.155724, bound.percentOfTheory(), 2e-4);
    }

    @Test
    void oneBatchUnlikeTheOthersIsSaid() {
        Experience.Bound bound = bound(book(List.of("0.20", "0.21", "0.20", "0.21", "0.20", "3.0"))
                        .book())
                .orElseThrow();
        assertTrue(bound.normalityDoubted());
        assertTrue(bound.inWords().contains("do not look normally distributed"), bound.inWords());
    }

    @Test
    void isShownAndIsNoEvidenceUnlessTheLimitsSaySo() {
        Content shown = a1(book(FIVE));
        assertEquals(Content.Rests.CONSERVATION, shown.rests());
        assertTrue(
                shown.evidence()
                        .endsWith("5 earlier batches: at most 0.64 % of theory (95 % of batches, 95 % confidence),"
                                + " which does not count here"),
                shown.evidence());
        Content counted = a1(book(FIVE).limit("Experience counts", "yes"));
        assertEquals(Content.Rests.EXPERIENCE, counted.rests());
        assertEquals(
                20.0 * (0.30 + 4.203 * 0.0790569) / 100,
                counted.upperBoundGrams().orElseThrow(),
                1e-4);
    }

    @Test
    void anAssayOfItsOwnStands() {
        SmallBook book = book(FIVE).limit("Experience counts", "yes");
        book.row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "10", "Unit", "mg/mL");
        assertEquals(Content.Kind.MEASURED, a1(book).kind());
    }

    @Test
    void aRagHasNoExperience() {
        SmallBook book = book(FIVE).limit("Experience counts", "yes").first("layers", "Phase", "rag");
        assertFalse(a1(book).evidence().contains("earlier batches"));
    }

    @Test
    void earlierReviewsCountOnceAndNeverTheRunItself() {
        Book book = book(FIVE.subList(0, 3)).book();
        EarlierContent other = new EarlierContent("S-1", "A1", "P", "X0", Optional.empty(), 0.35, false);
        EarlierContent second = new EarlierContent("S-1", "a1", "p", "X-1", Optional.empty(), 0.40, false);
        EarlierContent own = new EarlierContent("S-1", "A1", "P", "X1", Optional.empty(), 0.35, false);
        assertEquals(
                5,
                bound(book.withEarlier(List.of(other, other, second, own), List.of()))
                        .orElseThrow()
                        .batches());
        assertTrue(
                bound(book.withEarlier(List.of(other, other, own), List.of())).isEmpty());
    }

    /** The same day and within 0.005 % of theory; a note without a day may be of another batch. */
    @ParameterizedTest
    @CsvSource({
        "2026-01-05, 0.354, 4",
        "2026-01-05, 0.346, 4",
        "2026-01-05, 0.356, 5",
        "2026-01-06, 0.350, 5",
        "'', 0.350, 5"
    })
    void batchOfAReviewAndOfTheHistoryCountsOnce(String day, String percent, int batches) {
        SmallBook small = book(List.of("0.20", "0.25", "0.30"));
        small.history("Series", "S-1", "Layer", "A1", "Content", percent, "Date", day);
        EarlierContent reviewed =
                new EarlierContent("S-1", "A1", "P", "X0", Optional.of(LocalDate.of(2026, 1, 5)), 0.35, false);
        Optional<Experience.Bound> bound = bound(small.book().withEarlier(List.of(reviewed), List.of()));
        assertEquals(batches == 5, bound.isPresent());
    }

    @Test
    void onlyBatchesOfTheSameLayerAndSeriesCount() {
        SmallBook small = book(FIVE.subList(0, 4));
        small.history("Series", "S-2", "Layer", "A1", "Content", "0.3");
        small.history("Series", "S-1", "Layer", "A2", "Content", "0.3");
        small.history("Series", "S-1", "Layer", "", "Content", "0.3");
        small.history("Series", "S-1", "Layer", "A1", "Content", ">0.3");
        small.history("Series", "S-1", "Layer", "A1", "Content", "n.d.");
        assertTrue(bound(small.book()).isEmpty());
        small.history("Series", "S - 1", "Layer", "a1", "Content", "0.3");
        assertTrue(bound(small.book()).isPresent());
        assertTrue(bound(small.but("runs", "Series", "").book()).isEmpty());
    }

    @Test
    void ofTwoProductsANoteTellsWhichOne() {
        SmallBook small = book(FIVE).row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "200");
        assertTrue(bound(small.book()).isEmpty());
        List<EarlierContent> named = FIVE.stream()
                .map(p -> new EarlierContent("S-1", "A1", "Q", "Y" + p, Optional.empty(), Double.parseDouble(p), false))
                .toList();
        Book book = small.book().withEarlier(named, List.of());
        assertTrue(bound(book).isEmpty());
        assertTrue(Experience.of(book).bound(book.runs().get(0), "A1", "Q").isPresent());
    }

    @Test
    void limitsSayWhetherItCounts() {
        assertFalse(bound(book(FIVE).book()).orElseThrow().counts());
        assertTrue(bound(book(FIVE).limit("Experience counts", "yes").book())
                .orElseThrow()
                .counts());
    }
}
