package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static workuptally.tally.suspects.TypedCells.entry;
import static workuptally.tally.suspects.TypedCells.row;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.model.Place;
import workuptally.tally.amounts.Substances;
import workuptally.tally.suspects.Entry.Sort;

/** What may have been meant by one number; vessels F-1 of 84.20 g and F-2 of 60.00 g are in the register. */
class SlipsTest {
    private static final Substances SUBSTANCES = SmallBook.substances();
    private static final Book BOOK = SmallBook.empty()
            .row("vessels", "Vessel", "F-1", "Date", "2026-03-05", "Clean dry tare", "84.20")
            .row("vessels", "Vessel", "F-2", "Date", "2026-01-05", "Clean dry tare", "60.00")
            .book();

    private static List<Hypothesis> of(String formula, OptionalDouble settling, Entry entry, Entry... others) {
        TareRegister register = new TareRegister(BOOK.vesselTares());
        List<Entry> entries = Stream.concat(Stream.of(entry), Stream.of(others)).toList();
        return new Slips(e -> formula, entries, register, new EntryChecks(BOOK, SUBSTANCES, register), SUBSTANCES)
                .of(entry, settling);
    }

    private static List<Hypothesis> of(Entry entry, Entry... others) {
        return of("", OptionalDouble.empty(), entry, others);
    }

    private static List<String> suggested(List<Hypothesis> all, UsualSlip slip) {
        return all.stream()
                .filter(h -> h.slip() == slip)
                .map(Hypothesis::suggested)
                .toList();
    }

    private static Hypothesis only(List<Hypothesis> all, UsualSlip slip) {
        List<Hypothesis> of = all.stream().filter(h -> h.slip() == slip).toList();
        assertEquals(1, of.size());
        return of.get(0);
    }

    private static double meant(Hypothesis hypothesis) {
        return hypothesis
                .changes()
                .numbers()
                .get(0)
                .field()
                .entered()
                .orElseThrow()
                .value();
    }

    @Test
    void aVolumeMovesItsPointSwapsDigitsAndChangesItsUnit() {
        List<Hypothesis> all = of(entry(Sort.VOLUME, "163", row("layers", 2), "Volume"));
        assertEquals(List.of("16.3", "1630"), suggested(all, UsualSlip.DECIMAL_POINT));
        assertEquals(List.of("0.163", "163000"), suggested(all, UsualSlip.MILLIGRAMS_FOR_GRAMS));
        assertEquals(List.of("613", "136", "1063"), suggested(all, UsualSlip.DIGITS_SWAPPED));
        // two ways each; a zero in front three times as rare as each of what is then three
        assertEquals(2 * Math.log(2), all.get(0).handicap() - UsualSlip.DECIMAL_POINT.handicap(), 1e-12);
        Hypothesis swapped = all.stream()
                .filter(h -> h.suggested().equals("613"))
                .findFirst()
                .orElseThrow();
        assertEquals(2, swapped.alternatives(), 0);
        Hypothesis zero = all.stream()
                .filter(h -> h.suggested().equals("1063"))
                .findFirst()
                .orElseThrow();
        assertEquals(9, zero.alternatives(), 0);
        assertEquals("163", swapped.typed());
        assertEquals("Volume of row 2", swapped.what());
        assertEquals("layers.csv line 2, Volume", swapped.places().get(0).inWords());
    }

    @Test
    void aResultChangesNoUnit() {
        List<Hypothesis> all = of(entry(Sort.RESULT, "0.20", row("assays", 2), "Result"));
        assertEquals(List.of("0.020", "2.0"), suggested(all, UsualSlip.DECIMAL_POINT));
        assertEquals(List.of(), suggested(all, UsualSlip.MILLIGRAMS_FOR_GRAMS));
    }

    @Test
    void anAssayBelowOneMayBeAFraction() {
        List<Hypothesis> fraction = of(entry(Sort.PERCENT, "0.985", row("isolated", 2), "Assay"));
        assertEquals(List.of("0.0985", "9.85", "98.5"), suggested(fraction, UsualSlip.DECIMAL_POINT));
        assertEquals(
                List.of("0.1", "10", "100"),
                suggested(of(entry(Sort.PERCENT, "1", row("isolated", 2), "Assay")), UsualSlip.DECIMAL_POINT));
        assertEquals(
                List.of("0.0985", "9.85"),
                suggested(of(entry(Sort.PERCENT, "0.985", row("assays", 2), "Result")), UsualSlip.DECIMAL_POINT));
        List<Hypothesis> whole = of(entry(Sort.PERCENT, "98.5", row("isolated", 2), "Assay"));
        // 985 % is none
        assertEquals(List.of("9.85"), suggested(whole, UsualSlip.DECIMAL_POINT));
    }

    @Test
    void theLowerAPurityTheRarerItIs() {
        // a tenth is rare in itself, and e times rarer for each 15 % lower
        Hypothesis tenth = only(of(entry(Sort.PERCENT, "98.5", row("isolated", 2), "Assay")), UsualSlip.DECIMAL_POINT);
        assertEquals(20 * Math.exp((98.5 - 9.85) / 15), tenth.alternatives(), 1e-9);
        Hypothesis ofLayer =
                of(entry(Sort.PERCENT, "98.5", row("assays", 2), "Result")).get(0);
        assertEquals(20, ofLayer.alternatives(), 1e-9);
    }

    @Test
    void aTareOfAnotherVesselOfTheRegisterIsThatOfItsOwn() {
        Hypothesis own =
                only(of(entry(Sort.TARE, "60.00", row("layers", 2), "Tare", "F-1")), UsualSlip.TARE_OF_ANOTHER_VESSEL);
        assertEquals("84.20", own.suggested());
        assertEquals(84.20, meant(own), 0);
        assertEquals(
                List.of(),
                suggested(
                        of(entry(Sort.TARE, "61.00", row("layers", 2), "Tare", "F-1")),
                        UsualSlip.TARE_OF_ANOTHER_VESSEL));
    }

    @Test
    void aTareOfAnotherVesselOfTheRunIsThatOfItsOwn() {
        Entry typed = entry(Sort.TARE, "71.00", row("layers", 2), "Tare", "F-1");
        assertEquals(
                List.of("84.20"),
                suggested(
                        of(typed, entry(Sort.TARE, "71.00", row("layers", 5), "Tare", "E-7")),
                        UsualSlip.TARE_OF_ANOTHER_VESSEL));
        assertEquals(
                List.of(),
                suggested(
                        of(typed, entry(Sort.TARE, "71.00", row("layers", 5), "Tare", "f-1")),
                        UsualSlip.TARE_OF_ANOTHER_VESSEL));
        assertEquals(
                List.of(),
                suggested(
                        of(typed, entry(Sort.GROSS, "71.00", row("layers", 5), "Gross", "E-7")),
                        UsualSlip.TARE_OF_ANOTHER_VESSEL));
        assertEquals(
                List.of(),
                suggested(
                        of(typed, entry(Sort.TARE, "73.00", row("layers", 5), "Tare", "E-7")),
                        UsualSlip.TARE_OF_ANOTHER_VESSEL));
    }

    @Test
    void theTareOfAVesselThatNobodyRegisteredIsNotTold() {
        Entry typed = entry(Sort.TARE, "60.00", row("layers", 2), "Tare", "E-7");
        Hypothesis untold = only(of("", OptionalDouble.of(70.55), typed), UsualSlip.TARE_OF_ANOTHER_VESSEL);
        assertEquals("", untold.suggested());
        assertEquals(70.55, meant(untold), 1e-9);
        assertEquals("Tare of row 2, the tare of another vessel in the register", untold.what());
        assertEquals(1, untold.alternatives(), 0);
        assertEquals(List.of(), suggested(of(typed), UsualSlip.TARE_OF_ANOTHER_VESSEL));
        // to the last digit, 0.01 g
        Entry near = entry(Sort.TARE, "60.02", row("layers", 2), "Tare", "E-7");
        assertEquals(List.of(), suggested(of("", OptionalDouble.of(70.55), near), UsualSlip.TARE_OF_ANOTHER_VESSEL));
    }

    @Test
    void aGrossAsNetLosesTheTareOfItsVessel() {
        Entry net = entry(Sort.NET, "134.70", row("layers", 2), "Net", "F-1");
        Hypothesis less = only(of(net), UsualSlip.GROSS_FOR_NET);
        assertEquals("50.50", less.suggested());
        assertEquals(50.50, meant(less), 1e-9);
        assertEquals(1, less.alternatives(), 0);
    }

    @Test
    void aGrossAsNetInAnUnknownVesselLeavesATareOfUsualSize() {
        Entry net = entry(Sort.NET, "134.70", row("layers", 2), "Net", "E-7");
        Hypothesis untold = only(of("", OptionalDouble.of(54.70), net), UsualSlip.GROSS_FOR_NET);
        assertEquals("", untold.suggested());
        assertEquals("Net of row 2, with a vessel and without its tare", untold.what());
        assertEquals(15, untold.alternatives(), 0);
        // half of 60.00 g at least, twice 84.20 g at most
        assertFalse(suggested(of("", OptionalDouble.of(104.69), net), UsualSlip.GROSS_FOR_NET)
                .isEmpty());
        assertTrue(suggested(of("", OptionalDouble.of(104.71), net), UsualSlip.GROSS_FOR_NET)
                .isEmpty());
        Entry heavy = entry(Sort.NET, "200.00", row("layers", 2), "Net", "E-7");
        assertFalse(suggested(of("", OptionalDouble.of(31.61), heavy), UsualSlip.GROSS_FOR_NET)
                .isEmpty());
        assertTrue(suggested(of("", OptionalDouble.of(31.59), heavy), UsualSlip.GROSS_FOR_NET)
                .isEmpty());
        // 10.00 g, a vial of this run
        Entry vial = entry(Sort.TARE, "20.00", row("layers", 6), "Tare", "V-1");
        assertFalse(suggested(of("", OptionalDouble.of(124.69), net, vial), UsualSlip.GROSS_FOR_NET)
                .isEmpty());
        assertTrue(suggested(of(net), UsualSlip.GROSS_FOR_NET).isEmpty());
        Entry transfer = entry(Sort.NET, "134.70", row("transfers", 2), "Amount", "");
        assertTrue(suggested(of("", OptionalDouble.of(54.70), transfer), UsualSlip.GROSS_FOR_NET)
                .isEmpty());
    }

    @Test
    void aGrossIsMoreThanItsTare() {
        Entry gross = entry(Sort.GROSS, "134.70", row("layers", 2), "Gross", "F-1");
        Entry tare = entry(Sort.TARE, "84.20", row("layers", 2), "Tare", "F-1");
        List<Hypothesis> all = of(gross, tare);
        assertEquals(List.of("1347.0"), suggested(all, UsualSlip.DECIMAL_POINT));
        assertEquals(
                List.of("layers.csv line 2, Gross", "layers.csv line 2, Tare"),
                all.get(0).places().stream().map(Place::inWords).toList());
        assertEquals(List.of("8.420"), suggested(of(tare, gross), UsualSlip.DECIMAL_POINT));
        // without the other one, both ways
        assertEquals(2, suggested(of(gross), UsualSlip.DECIMAL_POINT).size());
        assertEquals(2, suggested(of(tare), UsualSlip.DECIMAL_POINT).size());
        // as much as the other is nothing in the vessel
        Entry equal = entry(Sort.TARE, "13.470", row("layers", 2), "Tare", "F-1");
        assertEquals(List.of("1347.0"), suggested(of(gross, equal), UsualSlip.DECIMAL_POINT));
        Entry tenth = entry(Sort.TARE, "13.47", row("layers", 2), "Tare", "F-1");
        assertEquals(List.of("1.347"), suggested(of(tenth, gross), UsualSlip.DECIMAL_POINT));
    }

    @Test
    void aMolarMassOfAnotherFormIsThatOfItsFormula() {
        // benzylamine C7H9N 107.15, its hydrochloride C7H10ClN 143.61 g/mol; 36.46 of hydrogen chloride apart
        List<Hypothesis> all = of(
                "C7H10ClN", OptionalDouble.empty(), entry(Sort.MOLAR_MASS, "107.15", row("charges", 2), "Molar mass"));
        assertEquals(1, all.size());
        assertEquals("143.61", only(all, UsualSlip.SALT_FOR_BASE).suggested());
    }

    @Test
    void aMolarMassOffItsFormulaByAnythingElseIsASlip() {
        // caffeine, 194.19 g/mol
        List<Hypothesis> all = of(
                "C8H10N4O2", OptionalDouble.empty(), entry(Sort.MOLAR_MASS, "914.19", row("charges", 2), "Molar mass"));
        assertEquals(List.of(), suggested(all, UsualSlip.SALT_FOR_BASE));
        assertTrue(suggested(all, UsualSlip.DIGITS_SWAPPED).contains("194.19"));
        assertEquals(List.of("91.419", "9141.9"), suggested(all, UsualSlip.DECIMAL_POINT));
        assertEquals(List.of(), suggested(all, UsualSlip.MILLIGRAMS_FOR_GRAMS));
        assertEquals(
                List.of(),
                of("", OptionalDouble.empty(), entry(Sort.MOLAR_MASS, "914.19", row("charges", 2), "Molar mass")));
    }

    @Test
    void theDigitsOfTheRowBesideMayHaveBeenCopied() {
        Entry copied = entry(Sort.GROSS, "111.20", row("layers", 4), "Gross");
        Entry above = entry(Sort.GROSS, "111.20", row("layers", 3), "Gross");
        Hypothesis untold = only(of("", OptionalDouble.of(277), copied, above), UsualSlip.NEIGHBOURING_ROW);
        assertEquals("Gross of row 4, the figure of line 3 too", untold.what());
        assertEquals("", untold.suggested());
        assertEquals(277, meant(untold), 1e-9);
        assertEquals(List.of(), suggested(of(copied, above), UsualSlip.NEIGHBOURING_ROW));
        OptionalDouble settling = OptionalDouble.of(277);
        Entry other = entry(Sort.GROSS, "111.21", row("layers", 3), "Gross");
        assertEquals(List.of(), suggested(of("", settling, copied, other), UsualSlip.NEIGHBOURING_ROW));
        Entry farther = entry(Sort.GROSS, "111.20", row("layers", 2), "Gross");
        assertEquals(List.of(), suggested(of("", settling, copied, farther), UsualSlip.NEIGHBOURING_ROW));
        // two digits are alike by chance
        assertEquals(
                List.of(),
                suggested(
                        of(
                                "",
                                settling,
                                entry(Sort.VOLUME, "50", row("layers", 4), "Volume"),
                                entry(Sort.VOLUME, "50", row("layers", 3), "Volume")),
                        UsualSlip.NEIGHBOURING_ROW));
        assertEquals(
                1,
                suggested(
                                of(
                                        "",
                                        settling,
                                        entry(Sort.VOLUME, "150", row("layers", 4), "Volume"),
                                        entry(Sort.VOLUME, "150", row("layers", 3), "Volume")),
                                UsualSlip.NEIGHBOURING_ROW)
                        .size());
    }

    @Test
    void oneSubstanceInTwoRowsHasOneFigureAndIsNoCopy() {
        Entry first = entry(Sort.DENSITY, "0.902", row("workup", 3), "Density");
        Entry again =
                new Entry(new BookCell(row("workup", 4), "Density"), first.number(), first.what(), Sort.DENSITY, "");
        assertEquals(List.of(), suggested(of("", OptionalDouble.of(1.1), again, first), UsualSlip.NEIGHBOURING_ROW));
    }

    @Test
    void ofTwoSlipsToOneFigureTheMoreUsualOneStands() {
        // 100 with its point moved is also 100 with its first digits swapped to 010, and 1000 the zero lost
        List<Hypothesis> all = of(entry(Sort.VOLUME, "100", row("layers", 2), "Volume"));
        assertEquals(1, all.stream().filter(h -> meant(h) == 1000).count());
        assertTrue(suggested(all, UsualSlip.DECIMAL_POINT).contains("1000"));
        assertEquals(
                List.of("1000"),
                suggested(of(entry(Sort.RESULT, "100", row("assays", 2), "Result")), UsualSlip.DECIMAL_POINT).stream()
                        .filter("1000"::equals)
                        .toList());
        // settled by 21.0: the point of 210 comes before a copy of the row beside
        List<Hypothesis> copied = of(
                "",
                OptionalDouble.of(21.0),
                entry(Sort.VOLUME, "210", row("layers", 4), "Volume"),
                entry(Sort.VOLUME, "210", row("layers", 3), "Volume"));
        assertEquals(
                List.of(UsualSlip.DECIMAL_POINT),
                copied.stream()
                        .filter(h -> meant(h) == 21.0)
                        .map(Hypothesis::slip)
                        .toList());
    }

    @Test
    void aNumberALittleLargerTellsWhatAnyOtherWouldDo() {
        Changes nudged = Slips.nudged(entry(Sort.NET, "50.00", row("layers", 2), "Net"), 0.5);
        assertEquals(
                50.5, nudged.numbers().get(0).field().entered().orElseThrow().value(), 0);
        assertEquals(
                "50.00", nudged.numbers().get(0).field().entered().orElseThrow().asTyped());
    }

    @Test
    void aSlipIsRankedByHowRareItIs() {
        Hypothesis four =
                new Hypothesis(Changes.NONE, UsualSlip.CELLS_SWAPPED, List.of(), row("layers", 2), "", "", "", 4);
        assertEquals(3 + 2 * Math.log(4), four.handicap(), 1e-12);
        assertEquals(
                0.5,
                new Hypothesis(Changes.NONE, UsualSlip.COUNTED_TWICE, List.of(), row("layers", 2), "", "", "")
                        .handicap(),
                1e-12);
        assertEquals("counted twice", UsualSlip.COUNTED_TWICE.word());
    }
}
