package workuptally.tally.waste;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;

/**
 * 90.00 g of ethyl acetate, washed with 50.00 g of water and concentrated. Ethyl acetate takes 7.7 % of a saturated water layer (Merck
 * Index, as quoted in the solvent table).
 */
class SolventAccountTest {
    @Test
    void waterLayerTakesSolventUpToItsSolubility() {
        // 50.00 g water × 7.7 / 92.3 = 4.17118 g.
        assertEquals(4.17118, use(washed()).inLayersGrams(), 1e-4);
    }

    @Test
    void brineTakesAThirdOfThat() {
        // 50.00 g of 26.41 % brine, a solution: 50 × 7.7/3 / (100 − 7.7/3) = 1.31713 g.
        assertEquals(
                1.31713,
                use(washed().but("workup", "Material", "brine")
                                .but("workup", "Volume", "41.643")
                                .but("workup", "Mass", ""))
                        .inLayersGrams(),
                2e-3);
    }

    @Test
    void distillateIsRecoveredByItsComposition() {
        // 70.00 g × 98 % = 68.6 g.
        assertEquals(68.6, use(washed()).recoveredGrams(), 1e-9);
    }

    /** Only what is set aside to be used again is recovered; the rest of the balance does not move. */
    @ParameterizedTest
    @ValueSource(strings = {"kept", "used up", "released", ""})
    void distillateThatIsNotToBeReusedIsNotRecovered(String status) {
        SolventUse use = use(washed().but("layers", "Status", status));
        assertEquals(0, use.recoveredGrams(), 0);
        assertEquals(68.6, use.inDistillatesGrams(), 1e-9);
        assertEquals(use(washed()).notFoundGrams(), use.notFoundGrams(), 1e-9);
    }

    @Test
    void weighedDistillateWithoutACompositionIsOfTheSolventsThatWereThere() {
        assertEquals(70.0, use(washed().but("layers", "Composition", "")).recoveredGrams(), 1e-9);
    }

    @Test
    void distillateReadByVolumeIsOfTheSolventsThatWereThere() {
        // 80 mL × 0.9003 g/mL = 72.0 g.
        SmallBook book = washed().but("layers", "Composition", "")
                .but("layers", "Net", "")
                .but("layers", "Volume", "80");
        assertEquals(72.0, use(book).recoveredGrams(), 0.05);
    }

    @Test
    void moreDistillateThanSolventRecoversNoMoreThanWasPutIn() {
        SmallBook book = washed().but("layers", "Composition", "").but("layers", "Net", "120.00");
        assertEquals(90.0, use(book).recoveredGrams(), 1e-6);
    }

    @Test
    void solventStrippedBeforeTheExtractionIsNotInIt() {
        // 60 mL methanol are taken off unmeasured; the water after them meets ether alone.
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "MeOH", "Role", "solvent", "Actual amount", "60", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "quench", "From", "RM", "Material", "ice water")
                .but("workup", "Volume", "30")
                .but("workup", "Gives aqueous", "Q1")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "Q1", "Gives aqueous", "Q2")
                .row("workup", "Step", "3", "Operation", "extract", "From", "Q2", "Material", "Et2O", "Volume", "30")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "32.00", "Status", "kept");
        SolventUse methanol = book.tally().solvents().stream()
                .filter(u -> u.solvent().equals("methanol"))
                .findFirst()
                .orElseThrow();
        assertEquals(0, methanol.inLayersGrams(), 1e-9);
        assertTrue(
                book.review().findings().stream().noneMatch(f -> f.code().word().equals("water-miscible-solvent")));
    }

    @Test
    void eluentCountsAsTheSolventsItIsMadeOf() {
        // 600 mL hexane/EtOAc 9:1: 540 mL × 0.6596 = 356.2 g; 60 mL × 0.9003 = 54.0 g.
        SmallBook book = washed().row(
                        "workup", "Step", "9", "Operation", "chromatograph", "From", "C1", "Volume", "600")
                .but("workup", "Material", "hexane/EtOAc 9:1")
                .but("workup", "Gives other", "F1");
        assertEquals(54.0, use(book).purificationGrams(), 0.1);
        assertEquals(
                356.2,
                book.tally().solvents().stream()
                        .filter(u -> u.solvent().equals("n-hexane"))
                        .mapToDouble(SolventUse::purificationGrams)
                        .sum(),
                0.5);
    }

    /** Of 9.214 g ethanol, 200 mmol, 80 mmol became part of 16.0 g P; of an amine that is a base nothing does. */
    @ParameterizedTest
    @CsvSource({"ethanol,46.07,1,3.6856", "ethanol,46.07,'',0", "triethylamine,101.19,1,0"})
    void solventThatTheReactionUsesUpIsInItsProduct(
            String solvent, String molarMass, String coefficient, double grams) {
        SolventUse use = SmallBook.reaction()
                .row("charges", "Material", solvent, "Role", "reagent", "Molar mass", molarMass, "Actual unit", "g")
                .but("charges", "Actual amount", "9.214")
                .but("charges", "Coefficient", coefficient)
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "16.00", "Assay", "100")
                .tally()
                .solvents()
                .get(0);
        assertEquals(grams, use.inLotsGrams(), 1e-6);
        assertEquals(9.214 - grams, use.notFoundGrams() + use.inLayersGrams(), 1e-6);
    }

    @Test
    void restIsNotFound() {
        // 90.00 − 68.6 − 4.17118 = 17.22882 g.
        assertEquals(17.22882, use(washed()).notFoundGrams(), 1e-4);
    }

    @ParameterizedTest
    @ValueSource(strings = {"70.00", "5.00", "95.00"})
    void whatWentInIsWhatBecameOfIt(String distillateGrams) {
        SmallBook book = washed().but("layers", "Net", distillateGrams);
        for (SolventUse use : book.tally().solvents()) {
            double out = use.recoveredGrams()
                    + use.inDistillatesGrams()
                    + use.inLayersGrams()
                    + use.onCakesGrams()
                    + use.inLotsGrams()
                    + use.notFoundGrams();
            assertEquals(use.inGrams(), out, 1e-9);
        }
    }

    @Test
    void eluentThatIsDistilledOffAgainIsNotFoundTwice() {
        // 30 mL hexane put in by the recrystallisation alone: nothing of it is owed to the workup.
        SmallBook book = washed().row("workup", "Step", "9", "Operation", "crystallise", "From", "C1", "Volume", "30")
                .but("workup", "Material", "hexane")
                .but("workup", "Gives organic", "M1")
                .row("workup", "Step", "10", "Operation", "concentrate", "From", "M1", "Gives other", "D2")
                .row("layers", "Layer", "D2", "Phase", "distillate", "Volume", "25", "Status", "kept");
        SolventUse hexane = book.tally().solvents().stream()
                .filter(u -> u.solvent().equals("n-hexane"))
                .findFirst()
                .orElseThrow();
        assertEquals(0, hexane.notFoundGrams(), 1e-9);
        assertEquals(30 * 0.6596, hexane.purificationGrams(), 0.05);
    }

    @Test
    void litresAreByTheListedDensity() {
        // 90.00 g / 0.9003 g/mL = 99.967 mL.
        assertEquals(0.099967, use(washed()).inLitres(), 1e-6);
    }

    @Test
    void solventInTheCrudeIsThatOfItsAssay() {
        // 5 % of 18.00 g = 0.9 g.
        SmallBook book = washed().row(
                        "assays",
                        "Sample",
                        "C1",
                        "Substance",
                        "ethyl acetate",
                        "Method",
                        "GC",
                        "Result",
                        "5",
                        "Unit",
                        "% w/w");
        assertEquals(0.9, use(book).inLotsGrams(), 1e-9);
    }

    @Test
    void solventOfASolutionCountsWithoutItsSolute() {
        // 20 mL of 1.0 mol/L R (100 g/mol) in toluene at 0.90 g/mL: 18.0 g − 2.0 g = 16.0 g toluene.
        SmallBook book = washed().row(
                        "charges",
                        "Material",
                        "R in toluene",
                        "Role",
                        "reagent",
                        "Molar mass",
                        "100",
                        "Molarity",
                        "1.0")
                .but("charges", "Density", "0.90")
                .but("charges", "Actual amount", "20")
                .but("charges", "Actual unit", "mL");
        SolventUse toluene = book.tally().solvents().stream()
                .filter(u -> u.solvent().equals("toluene"))
                .findFirst()
                .orElseThrow();
        assertEquals(16.0, toluene.chargedGrams(), 1e-9);
    }

    @Test
    void solventOfAPurificationStandsApart() {
        SmallBook book = washed().row(
                        "workup",
                        "Step",
                        "9",
                        "Operation",
                        "crystallise",
                        "From",
                        "C1",
                        "Material",
                        "ethyl acetate",
                        "Mass",
                        "40.00")
                .but("workup", "Gives other", "ML1");
        assertEquals(40.0, use(book).purificationGrams(), 1e-9);
        assertEquals(90.0, use(book).inGrams(), 1e-9);
    }

    /**
     * 120 g and 60 g distilled off 90 g: of each half, 60 and 30 g. The rest can only be of the 40 g that a crystallisation brought, of which
     * 9 g more were taken off to be re-used: (60 + 9) and 30 g, cut to 40 g, 40/99 of each: 27.8788 and 12.1212 g.
     */
    @Test
    void moreThanTheWorkupGaveIsOfThePurification() {
        SmallBook book = washed().but("layers", "Composition", "ethyl acetate 100 %")
                .but("layers", "Net", "120.00")
                .row("layers", "Layer", "D2", "Phase", "distillate", "Net", "60.00", "Status", "kept")
                .but("layers", "Composition", "ethyl acetate 100 %")
                .row("workup", "Step", "9", "Operation", "crystallise", "From", "C1", "Material", "ethyl acetate")
                .but("workup", "Mass", "40.00")
                .but("workup", "Gives other", "ML1")
                .row("workup", "Step", "10", "Operation", "concentrate", "From", "ML1", "Gives other", "D3")
                .row("layers", "Layer", "D3", "Phase", "distillate", "Net", "9.00", "Status", "to reuse")
                .but("layers", "Composition", "ethyl acetate 100 %")
                .first("workup", "Gives other", "D1+D2+C1");
        SolventUse use = use(book);
        assertEquals(60, use.recoveredGrams(), 1e-6);
        assertEquals(30, use.inDistillatesGrams(), 1e-6);
        assertEquals(27.8788, use.purification().recoveredGrams(), 1e-3);
        assertEquals(12.1212, use.purification().inDistillatesGrams(), 1e-3);
        assertEquals(0, use.purification().inLayersGrams(), 1e-6);
    }

    @Test
    void solutionWithoutADensityBringsAnUnknownMassOfSolvent() {
        SmallBook book = washed().row("charges", "Material", "R in toluene", "Role", "reagent", "Molarity", "1.0")
                .but("charges", "Actual amount", "20")
                .but("charges", "Actual unit", "mL");
        assertTrue(book.tally().notComputed().stream()
                .anyMatch(n -> n.what().equals("mass of toluene in R in toluene")
                        && n.because().equals("a solution charged by volume without a density")));
    }

    @Test
    void plannedRunHasNoSolventAccountYet() {
        SmallBook plan = SmallBook.reaction()
                .first("runs", "Status", "planned")
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Planned amount", "90.00")
                .but("charges", "Planned unit", "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous");
        assertEquals(List.of(), plan.tally().solvents());
    }

    private static SolventUse use(SmallBook book) {
        return book.tally().solvents().stream()
                .filter(u -> u.solvent().equals("ethyl acetate"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void recoveredSolventCountsByItsContent() {
        // 90.00 g × 60 % = 54.0 g.
        assertEquals(54.0, use(washed().but("charges", "Assay", "60")).chargedGrams(), 1e-9);
    }

    /** A blank is not zero: the solvent stands in the account, with an amount missing. */
    @ParameterizedTest
    @ValueSource(strings = {"", "8.00 L"})
    void solventWithoutAnAmountIsALeastFigure(String unit) {
        SolventUse use = use(washed().but("charges", "Actual amount", "").but("charges", "Actual unit", unit));
        assertEquals(1, use.missingAmounts());
        assertEquals(0, use.chargedGrams(), 0);
        assertEquals(0, use(washed()).missingAmounts());
    }

    private static SmallBook washed() {
        return SmallBook.reaction()
                .row(
                        "charges",
                        "Material",
                        "ethyl acetate",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "90.00",
                        "Actual unit",
                        "g")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "O1", "Gives other", "D1+C1")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Mass", "50.00")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "54.17", "Status", "kept")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "70.00", "Status", "to reuse")
                .but("layers", "Composition", "ethyl acetate 98 %");
    }
}
