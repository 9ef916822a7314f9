package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;

class ChargeAmountAccountTest {
    @Test
    void weighedChargeIsMassTimesAssayOverMolarMass() {
        // 10.00 g × 0.98 / 100 g/mol = 98.0 mmol.
        ChargeAmount amount = charged("Assay", "98");
        assertEquals(98.0, millimoles(amount), 1e-9);
        assertEquals(10.00, amount.massGrams().orElseThrow().value(), 1e-9);
    }

    @Test
    void uncertaintyOfAWeighedChargeComesFromBalanceAndAssay() {
        // 0.02 g of 10.00 g = 0.2 %; assay 0.3 %; together √(0.2² + 0.3²) = 0.36056 % of 100 mmol.
        ChargeAmount amount = charged("Assay", "");
        assertEquals(0.36056, amount.amountMillimoles().orElseThrow().standardUncertainty(), 1e-5);
    }

    @Test
    void neatLiquidIsVolumeTimesDensityOverMolarMass() {
        // 12.5 mL × 0.80 g/mL / 100 g/mol = 100 mmol.
        ChargeAmount amount = charged("Actual amount", "12.5", "Actual unit", "mL", "Density", "0.80");
        assertEquals(100.0, millimoles(amount), 1e-9);
        assertEquals(12.5, amount.volumeMillilitres().orElseThrow().value(), 1e-9);
    }

    @Test
    void listedLiquidNeedsNoDensity() {
        // 2.00 mL x 1.4380 g/mL (CRC Handbook, 25 °C) / 171.04 g/mol = 16.815 mmol.
        ChargeAmount amount = benzylBromide("");
        assertEquals(16.815, millimoles(amount), 0.005);
        assertEquals(2.876, amount.massGrams().orElseThrow().value(), 1e-9);
        // the density alone brings 0.005 of 1.438, so the mass is known no better than 0.35 %
        assertTrue(amount.massGrams().orElseThrow().standardUncertainty() > 0.0035 * 2.876);
    }

    @Test
    void listedLiquidNeedsNoFormulaEither() {
        // 1.00 mL x 1.0217 g/mL / 93.129 g/mol = 10.97 mmol.
        ChargeAmount amount = SmallBook.reaction()
                .row("charges", "Material", "aniline", "Actual amount", "1.00", "Actual unit", "mL")
                .tally()
                .amounts()
                .get(1);
        assertEquals(10.97, millimoles(amount), 0.005);
    }

    @Test
    void plainNumberIsNoLessCertainThanOneEnteredAsAbout() {
        // 2 mL: half of the last digit over the root of 3 is 0.289 mL = 14 %, more than the 5 % of 'ca.'.
        double plain = volumeUncertainty("2");
        assertEquals(0.100, plain, 0.001);
        assertEquals(volumeUncertainty("ca. 2"), plain, 0.001);
        assertTrue(volumeUncertainty("2.0") < 0.04);
    }

    private static double volumeUncertainty(String typed) {
        return charged("Actual amount", typed, "Actual unit", "mL", "Density", "0.80")
                .volumeMillilitres()
                .orElseThrow()
                .standardUncertainty();
    }

    @Test
    void typedDensityOfAListedLiquidWins() {
        // 2.00 mL x 1.40 g/mL = 2.80 g.
        assertEquals(2.80, benzylBromide("1.40").massGrams().orElseThrow().value(), 1e-9);
    }

    @Test
    void acidByVolumeHasTheDensityOfItsStrength() {
        // 2.00 mL x 1.6891 g/mL (Laliberte 2009, 85 %) = 3.378 g; x 0.85 / 97.994 g/mol = 29.30 mmol.
        ChargeAmount amount = SmallBook.reaction()
                .row("charges", "Material", "phosphoric acid", "Formula", "H3PO4", "Assay", "85")
                .but("charges", "Actual amount", "2.00")
                .but("charges", "Actual unit", "mL")
                .tally()
                .amounts()
                .get(1);
        assertEquals(3.378, amount.massGrams().orElseThrow().value(), 0.001);
        assertEquals(29.30, millimoles(amount), 0.01);
    }

    private static ChargeAmount benzylBromide(String density) {
        return SmallBook.reaction()
                .row("charges", "Material", "BnBr", "Formula", "C7H7Br", "Actual amount", "2.00", "Actual unit", "mL")
                .but("charges", "Density", density)
                .tally()
                .amounts()
                .get(1);
    }

    @Test
    void amountEnteredInMillimolesGivesTheMassToWeigh() {
        // 50 mmol × 100 g/mol / 0.80 = 6.25 g of the 80 % material.
        ChargeAmount amount = charged("Actual amount", "50", "Actual unit", "mmol", "Assay", "80");
        assertEquals(50.0, millimoles(amount), 1e-9);
        assertEquals(6.25, amount.massGrams().orElseThrow().value(), 1e-9);
    }

    @Test
    void milligramsAreConverted() {
        assertEquals(2.5, millimoles(charged("Actual amount", "250", "Actual unit", "mg")), 1e-9);
    }

    @Test
    void titreGoesBeforeTheLabelAndBothAreKept() {
        // 20 mL × 2.62 mol/L = 52.4 mmol; by the label 20 × 3.0 = 60 mmol.
        ChargeAmount amount = charged("Actual amount", "20", "Actual unit", "mL", "Molarity", "3.0", "Titre", "2.62");
        assertEquals(52.4, millimoles(amount), 1e-9);
        assertEquals(60.0, amount.labelAmountMillimoles().orElseThrow(), 1e-9);
    }

    @Test
    void labelIsUsedWithoutATitre() {
        ChargeAmount amount = charged("Actual amount", "20", "Actual unit", "mL", "Molarity", "3.0");
        assertEquals(60.0, millimoles(amount), 1e-9);
        assertTrue(amount.labelAmountMillimoles().isEmpty());
    }

    @Test
    void unreadableTitreIsNotReplacedByTheLabel() {
        ChargeAmount amount =
                charged("Actual amount", "20", "Actual unit", "mL", "Molarity", "3.0", "Titre", "smudged");
        assertTrue(amount.amountMillimoles().isEmpty());
    }

    @Test
    void unreadableAssayIsNotTakenAsAHundredPercent() {
        assertTrue(charged("Assay", "smudged").amountMillimoles().isEmpty());
    }

    @Test
    void assayOfZeroGivesNoMassToWeigh() {
        ChargeAmount amount = charged("Actual amount", "50", "Actual unit", "mmol", "Assay", "0");
        assertTrue(amount.massGrams().isEmpty());
    }

    @Test
    void strengthInTheNameCountsWhereNoMolarityIsEntered() {
        // 15.0 mL × 2.00 mol/L = 30.0 mmol, by the density table at 20 °C.
        assertEquals(30.0, millimoles(named("2 M NaOH", "NaOH", "15.0", "mL")), 0.1);
        // 10.0 g × 10 % / 39.997 g/mol = 25.0 mmol.
        assertEquals(25.0, millimoles(named("10 % NaOH", "NaOH", "10.0", "g")), 0.05);
        // 3.0 mL of 96 % sulfuric acid: 3.0 × 18.0 mol/L = 54 mmol.
        assertEquals(54.0, millimoles(named("conc. H2SO4", "H2SO4", "3.0", "mL")), 0.5);
    }

    @Test
    void assayOrMolarityAsEnteredGoesBeforeTheName() {
        SmallBook book = SmallBook.reaction()
                .but("charges", "Material", "2 M NaOH")
                .but("charges", "Molar mass", "")
                .but("charges", "Formula", "NaOH")
                .but("charges", "Actual amount", "15.0")
                .but("charges", "Actual unit", "mL")
                .but("charges", "Molarity", "1.90");
        assertEquals(28.5, millimoles(book.tally().amounts().get(0)), 1e-9);
    }

    @Test
    void strengthInTheNameOfASolutionInAnotherSolventCountsToo() {
        // 10.0 mL × 2.50 mol/L = 25.0 mmol; 10.0 mL × 4.00 mol/L = 40.0 mmol.
        assertEquals(25.0, millimoles(named("n-BuLi 2.5 M in hexanes", "C4H9Li", "10.0", "mL")), 1e-9);
        assertEquals(40.0, millimoles(named("HCl 4 M in dioxane", "HCl", "10.0", "mL")), 1e-9);
        // 10.0 g × 60 % / 23.998 g/mol = 250 mmol; 10.0 g × 77 % / 172.57 g/mol = 44.6 mmol.
        assertEquals(250.0, millimoles(named("sodium hydride 60 %", "NaH", "10.0", "g")), 0.1);
        assertEquals(44.62, millimoles(named("mCPBA 77 %", "C7H5ClO3", "10.0", "g")), 0.01);
    }

    @Test
    void weighedSolutionNeedsItsDensity() {
        // 6.93 g / 0.693 g/mL × 2.50 mol/L = 25.0 mmol.
        ChargeAmount amount = charged(
                "Material",
                "n-BuLi 2.5 M in hexanes",
                "Molar mass",
                "",
                "Formula",
                "C4H9Li",
                "Actual amount",
                "6.93",
                "Density",
                "0.693");
        assertEquals(25.0, millimoles(amount), 1e-9);
        ChargeAmount without = named("dimethylzinc 1.2 M in toluene", "C2H6Zn", "8.70", "g");
        assertTrue(without.amountMillimoles().isEmpty());
        assertEquals(8.70, without.massGrams().orElseThrow().value(), 1e-9);
    }

    private static ChargeAmount named(String material, String formula, String amount, String unit) {
        return charged(
                "Material",
                material,
                "Molar mass",
                "",
                "Formula",
                formula,
                "Actual amount",
                amount,
                "Actual unit",
                unit);
    }

    @Test
    void liquidWithoutDensityHasNoAmountAndSaysWhatWouldUnlockIt() {
        SmallBook book = book("Actual amount", "12.5", "Actual unit", "mL");
        assertTrue(book.tally().amounts().get(0).amountMillimoles().isEmpty());
        assertTrue(book.tally()
                .notComputed()
                .contains(new NotComputed(
                        "mass of S", "charged by volume without a density", "Density of S in Charges")));
    }

    @Test
    void unreadableAmountIsNotZero() {
        SmallBook book = book("Actual amount", "a spatula");
        assertTrue(book.tally().amounts().get(0).amountMillimoles().isEmpty());
        assertEquals(
                "the amount cannot be read", book.tally().notComputed().get(0).because());
    }

    @Test
    void plannedAmountsStandInOnlyWhereNothingWasCharged() {
        ChargeAmount amount =
                charged("Actual amount", "", "Actual unit", "", "Planned amount", "5", "Planned unit", "g");
        assertTrue(amount.planned());
        assertEquals(50.0, millimoles(amount), 1e-9);
    }

    @Test
    void plannedAmountOfOneChargeDoesNotStandInOnceAnotherWasCharged() {
        RunTally tally = SmallBook.reaction()
                .row("charges", "Material", "R", "Molar mass", "50", "Planned amount", "5", "Planned unit", "g")
                .tally();
        assertTrue(tally.amounts().get(1).amountMillimoles().isEmpty());
    }

    /** 2.0 equivalents of 100 mmol S are 200 mmol; × 50 g/mol = 10.0 g. */
    @Test
    void equivalentsAreOfTheSubstrate() {
        SmallBook book = second("Actual amount", "2.0", "Actual unit", "eq");
        ChargeAmount amount = book.tally().amounts().get(1);
        assertEquals(200.0, millimoles(amount), 1e-9);
        assertEquals(10.0, amount.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(100.0, millimoles(book.tally().amounts().get(0)), 1e-9);
        SmallBook unknown = book.first("charges", "Actual amount", "");
        assertTrue(unknown.tally().amounts().get(1).amountMillimoles().isEmpty());
        assertSaid(unknown, "amount of R", "given in equivalents of a substrate whose amount is not known");
    }

    /** In a plan of 5.00 g S, 50 mmol, 2.0 equivalents are 100 mmol. */
    @Test
    void plannedEquivalentsAreOfThePlannedSubstrate() {
        SmallBook book = second("Planned amount", "2.0", "Planned unit", "eq")
                .first("charges", "Actual amount", "")
                .first("charges", "Planned amount", "5.00")
                .first("charges", "Planned unit", "g");
        assertEquals(100.0, millimoles(book.tally().amounts().get(1)), 1e-9);
    }

    @Test
    void chargeWithoutAnAmountIsSaid() {
        assertSaid(second(), "amount of R", "no actual amount");
        assertSaid(second().first("charges", "Actual amount", ""), "amount of R", "no planned amount");
        assertSaid(
                second("Actual amount", "20", "Actual unit", "mL", "Molarity", "smudged"),
                "amount of R",
                "its molarity cannot be read");
        assertSaid(
                second("Actual amount", "8.70", "Actual unit", "g", "Molarity", "1.2"),
                "amount of R",
                "a solution was weighed, and its density is not known");
        assertSaid(
                second("Actual amount", "8.70", "Actual unit", "g", "Coefficient", "1", "Molar mass", ""),
                "amount of R",
                "no molar mass");
        assertTrue(second("Actual amount", "8.70", "Actual unit", "g", "Molar mass", "").tally().notComputed().stream()
                .noneMatch(n -> n.what().equals("amount of R")));
    }

    @Test
    void titreMakesAnUnreadableLabelHarmless() {
        SmallBook book = second("Actual amount", "20", "Actual unit", "mL", "Molarity", "smudged", "Titre", "2.5");
        assertEquals(50.0, millimoles(book.tally().amounts().get(1)), 1e-9);
    }

    /** What was typed counts where the amount cannot give it: 30 mmol of R, whose density or molar mass nobody entered. */
    @ParameterizedTest
    @CsvSource({"'', '', 50, 30", "20, mL, 50, 30", "2.00, g, '', 30", "2.00, g, 50, 40"})
    void amountOfSubstanceAsTypedStandsIn(String amount, String unit, String molarMass, double expected) {
        ChargeAmount found = second("Actual amount", amount, "Actual unit", unit, "Amount of substance", "30")
                .but("charges", "Molar mass", molarMass)
                .tally()
                .amounts()
                .get(1);
        assertEquals(expected, millimoles(found), 1e-9);
        assertEquals(expected == 30, found.equation().equals("n as typed"));
    }

    @Test
    void noughtAsTypedStandsForNothing() {
        assertTrue(second("Amount of substance", "0")
                .tally()
                .amounts()
                .get(1)
                .amountMillimoles()
                .isEmpty());
    }

    /** 20 mmol of 50 g/mol are 1.00 g, 1.25 mL at 0.80 g/mL; without a density there is no volume. */
    @Test
    void liquidEnteredInMillimolesHasAVolume() {
        SmallBook book = second("Actual amount", "20", "Actual unit", "mmol", "Density", "0.80");
        assertEquals(
                1.25,
                book.tally().amounts().get(1).volumeMillilitres().orElseThrow().value(),
                1e-9);
        assertTrue(book.but("charges", "Density", "")
                .tally()
                .amounts()
                .get(1)
                .volumeMillilitres()
                .isEmpty());
    }

    /** 50 mmol of a 2.5 M solution are 20 mL, at 0.70 g/mL 14 g. */
    @Test
    void solutionEnteredInMillimolesHasAVolumeAndAMass() {
        ChargeAmount amount = second("Actual amount", "50", "Actual unit", "mmol", "Molarity", "2.5", "Density", "0.70")
                .tally()
                .amounts()
                .get(1);
        assertEquals(20.0, amount.volumeMillilitres().orElseThrow().value(), 1e-9);
        assertEquals(14.0, amount.massGrams().orElseThrow().value(), 1e-9);
    }

    /** 8.00 g at 0.80 g/mL are 10.0 mL; by the reference data, aniline 1.0217 g/mL, a volume is told in a plan only. */
    @Test
    void weighedLiquidHasAVolumeByTheDensityEntered() {
        SmallBook book = second("Actual amount", "8.00", "Actual unit", "g", "Density", "0.80");
        assertEquals(
                10.0,
                book.tally().amounts().get(1).volumeMillilitres().orElseThrow().value(),
                1e-9);
        SmallBook done = second("Material", "aniline", "Actual amount", "2.0434", "Actual unit", "g");
        assertTrue(done.tally().amounts().get(1).volumeMillilitres().isEmpty());
        SmallBook planned = second("Material", "aniline", "Planned amount", "2.0434", "Planned unit", "g")
                .first("charges", "Actual amount", "");
        assertEquals(
                2.0,
                planned.tally()
                        .amounts()
                        .get(1)
                        .volumeMillilitres()
                        .orElseThrow()
                        .value(),
                1e-9);
    }

    private static SmallBook second(String... headingsAndCells) {
        SmallBook book = SmallBook.reaction().row("charges", "Material", "R", "Role", "reagent", "Molar mass", "50");
        for (int i = 0; i < headingsAndCells.length; i += 2) {
            book.but("charges", headingsAndCells[i], headingsAndCells[i + 1]);
        }
        return book;
    }

    private static void assertSaid(SmallBook book, String what, String because) {
        List<NotComputed> said = book.tally().notComputed();
        assertTrue(
                said.stream().anyMatch(n -> n.what().equals(what) && n.because().equals(because)), said::toString);
    }

    @Test
    void molarMassAsTypedIsKeptBesideTheFormulas() {
        // Water, H2O = 18.015 g/mol by the abridged atomic weights (H 1.008, O 15.999): 18.015 g = 1000 mmol; as typed
        // 18.015/20 = 900.75 mmol.
        ChargeAmount amount = charged("Formula", "H2O", "Molar mass", "20", "Actual amount", "18.015");
        assertEquals(1000.0, millimoles(amount), 0.01);
        assertEquals(900.75, amount.asTypedMillimoles().orElseThrow(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({
        // 18.015 g/mol by the formula of water; a typed one counts beside it from 0.1 % off, either way
        "18.02, false",
        "18.00, false",
        "18.05, true",
        "17.95, true"
    })
    void smallDifferenceOfTheTypedMolarMassIsNone(String typed, boolean differs) {
        assertEquals(
                differs,
                charged("Formula", "H2O", "Molar mass", typed, "Actual amount", "18.015")
                        .asTypedMillimoles()
                        .isPresent());
    }

    @Test
    void listedMaterialThatNoTheoryRestsOnNeedsNoMolarMass() {
        // NaBH4: 22.990 + 10.81 + 4 × 1.008 = 37.832 g/mol; 1.00 g = 26.43 mmol
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "sodium borohydride", "Actual amount", "1.00", "Actual unit", "g");
        assertEquals(26.43, millimoles(book.tally().amounts().get(1)), 0.01);
        // with a coefficient the theory may rest on it, and its formula is asked for
        assertTrue(book.but("charges", "Coefficient", "1")
                .tally()
                .amounts()
                .get(1)
                .amountMillimoles()
                .isEmpty());
        assertTrue(book.but("charges", "Coefficient", "")
                .but("charges", "Material", "unobtainium")
                .tally()
                .amounts()
                .get(1)
                .amountMillimoles()
                .isEmpty());
        // a listed liquid is known by its row also then: aniline, 1.00 g / 93.13 g/mol
        book.but("charges", "Material", "aniline").but("charges", "Coefficient", "1");
        assertEquals(10.74, millimoles(book.tally().amounts().get(1)), 0.01);
    }

    @Test
    void amountOfSubstanceAsTypedStandsInForASolutionOfUnknownDensity() {
        SmallBook book = second("Actual amount", "8.70", "Actual unit", "g", "Molarity", "1.2");
        book.but("charges", "Amount of substance", "12");
        assertEquals(12.0, millimoles(book.tally().amounts().get(1)), 1e-9);
        // of a plan nothing was typed to stand in
        SmallBook plan = second("Planned amount", "8.70", "Planned unit", "g", "Molarity", "1.2")
                .but("charges", "Amount of substance", "12")
                .first("charges", "Actual amount", "");
        assertTrue(plan.tally().amounts().get(1).amountMillimoles().isEmpty());
    }

    @Test
    void whatIsMissingIsAskedForInTheColumnThatCounts() {
        assertTrue(second().tally().notComputed().stream()
                .anyMatch(n -> n.unlockedBy().equals("Actual amount of R in Charges")));
        assertTrue(second().first("charges", "Actual amount", "").tally().notComputed().stream()
                .anyMatch(n -> n.unlockedBy().equals("Planned amount of R in Charges")));
    }

    private static double millimoles(ChargeAmount amount) {
        return amount.amountMillimoles().orElseThrow().value();
    }

    private static ChargeAmount charged(String... headingsAndCells) {
        return book(headingsAndCells).tally().amounts().get(0);
    }

    private static SmallBook book(String... headingsAndCells) {
        SmallBook book = SmallBook.reaction();
        for (int i = 0; i < headingsAndCells.length; i += 2) {
            book.but("charges", headingsAndCells[i], headingsAndCells[i + 1]);
        }
        return book;
    }
}
