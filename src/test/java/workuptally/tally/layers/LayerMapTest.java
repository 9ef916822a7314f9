package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.tally.RunTally;
import workuptally.tally.waste.SolventUse;

/** One source goes once, and what the columns of a step say does not make a contact of it. 150 mL of methanol, 118.65 g, in each. */
class LayerMapTest {
    @Test
    void filtratesShareTheirSourceByMass() {
        SmallBook book = reaction()
                .row("workup", "Step", "1", "Operation", "filter", "From", "RM", "Gives organic", "F1+F2")
                .row("layers", "Layer", "F1", "Phase", "organic", "Net", "80.00", "Status", "kept")
                .row("layers", "Layer", "F2", "Phase", "organic", "Net", "40.00", "Status", "kept");
        SolventUse methanol = use(book.tally(), "methanol");
        assertTrue(methanol.inLayersGrams() <= methanol.inGrams() + 1e-9);
        assertEquals(2 * grams(book, "F2", "methanol"), grams(book, "F1", "methanol"), 0.1);
    }

    @Test
    void filtratesThatNobodyMeasuredHoldTheWholeOnce() {
        SmallBook book = reaction()
                .row("workup", "Step", "1", "Operation", "filter", "From", "RM", "Gives organic", "F1+F2")
                .row("layers", "Layer", "F1", "Phase", "organic", "Status", "kept")
                .row("layers", "Layer", "F2", "Phase", "organic", "Status", "kept");
        assertEquals(118.65, grams(book, "F1", "methanol"), 0.5);
        assertTrue(book.tally().makeUp("F2").isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"strip", "distil", "filter", "dry", "concentrate"})
    void columnsOfTheOutputsMakeNoContact(String operation) {
        SmallBook book = reaction()
                .row("workup", "Step", "1", "Operation", operation, "From", "RM", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Net", "60.00", "Status", "kept")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "55.00", "Status", "kept");
        RunTally tally = book.tally();
        assertEquals(List.of(), tally.contacts());
        assertEquals(List.of(), tally.evidence().gaps().unlabelledPhases());
        assertTrue(use(tally, "methanol").inLayersGrams() <= 118.7);
    }

    @Test
    void solidThatWentIntoSolutionTakesUpVolumeButIsNotPouredIntoTheFunnel() {
        // 150 mL methanol, 25.0 g of salt at 2.5 g/mL, 10.0 g of S at 1.2 g/mL, 50 mL water
        SmallBook book = reaction()
                .row("charges", "Material", "sodium chloride", "Role", "additive", "Formula", "NaCl")
                .but("charges", "Actual amount", "25.0")
                .but("charges", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives aqueous", "A1");
        RunTally tally = book.tally();
        assertEquals(
                150 + 10 + 10 / 1.2 + 50,
                tally.evidence().contactMixtures().get(0).inMillilitres(),
                0.01);
        assertEquals(150 + 50, tally.contacts().get(0).volumeMillilitres(), 0.01);
    }

    @Test
    void contactWithoutLabelsIsAMissingLayerAndNoVolumeOfZero() {
        SmallBook book = reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50");
        RunReview review = book.reviewOfRun();
        assertEquals(
                List.of("aqueous layer of step 1"),
                review.tally().evidence().gaps().missingLayers());
        assertTrue(review.findings().stream().anyMatch(f -> f.code().word().equals("layer-missing")));
        assertFalse(review.findings().stream().anyMatch(f -> f.code().word().equals("layer-volume-impossible")));
    }

    @Test
    void statedCompositionHoldsWithTheVolumeAlone() {
        // 50 mL of the mixture: 100 g are 81/0.9003 + 19/0.7893 mL by the densities of the solvent table
        SmallBook book = reaction()
                .row("workup", "Step", "1", "Operation", "concentrate", "From", "RM", "Gives other", "D1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Volume", "50", "Status", "kept")
                .but("layers", "Composition", "ethyl acetate 81 %; ethanol 19 %");
        double grams = 50 / (0.81 / 0.9003 + 0.19 / 0.7893);
        assertEquals(0.81 * grams, grams(book, "D1", "ethyl acetate"), 0.05);
        assertEquals(0.19 * grams, grams(book, "D1", "ethanol"), 0.05);
    }

    @Test
    void substrateIsNoSolventThoughATableListsIt() {
        SmallBook book = reaction()
                .row("charges", "Material", "acetone", "Role", "substrate", "Formula", "C3H6O")
                .but("charges", "Actual amount", "20.0")
                .but("charges", "Actual unit", "g");
        assertTrue(book.tally().solvents().stream().noneMatch(u -> u.solvent().equals("acetone")));
    }

    @Test
    void solventOfASolutionWithoutDensityIsUnknownAndNotZero() {
        SmallBook book = reaction()
                .row("charges", "Material", "organyllithium in n-hexane", "Role", "reagent", "Molar mass", "64")
                .but("charges", "Actual amount", "40")
                .but("charges", "Actual unit", "mL")
                .but("charges", "Molarity", "2.5");
        RunTally tally = book.tally();
        assertTrue(tally.solvents().stream().noneMatch(u -> u.solvent().equals("n-hexane")));
        assertTrue(tally.notComputed().stream()
                .anyMatch(n -> n.what().equals("mass of n-hexane in organyllithium in n-hexane")
                        && n.unlockedBy().contains("Density")));
    }

    @Test
    void hydrideIsGoneAfterANegativeTest() {
        assertTrue(quenched("not done").containsKey("sodium borohydride"));
        assertFalse(quenched("negative").containsKey("sodium borohydride"));
        assertTrue(quenched("negative").containsKey(IngredientAccount.QUENCHED));
    }

    @Test
    void eluateIsInTheAccountAndInAStream() {
        SmallBook book =
                purified("E1").row("layers", "Layer", "E1", "Phase", "organic", "Volume", "400", "Status", "kept");
        SolventUse toluene = use(book.tally(), "toluene");
        assertEquals(433.5, toluene.purificationGrams(), 0.5);
        assertEquals(toluene.purificationGrams(), toluene.purification().inLayersGrams(), 1);
        assertTrue(book.tally().waste().stream()
                .anyMatch(w -> w.layer().equals("E1") && w.stream().equals("non-halogenated-organic")));
    }

    @Test
    void eluateWithoutALabelStandsInAStreamAsNotRecorded() {
        RunTally tally = purified("").tally();
        assertTrue(tally.waste().stream()
                .anyMatch(w -> w.layer().equals("eluate of step 2") && w.why().contains("amount not recorded")));
        assertEquals(433.5, use(tally, "toluene").purification().notFoundGrams(), 0.5);
    }

    @Test
    void cakeWithoutARowIsTheDryingAgentAndNoLiquid() {
        SmallBook book = reaction()
                .row("workup", "Step", "1", "Operation", "dry", "From", "RM", "Material", "magnesium sulfate")
                .but("workup", "Mass", "4.0")
                .but("workup", "Gives organic", "O2")
                .row("workup", "Step", "2", "Operation", "filter", "From", "O2", "Gives organic", "O3")
                .but("workup", "Gives other", "K1")
                .row("layers", "Layer", "O3", "Phase", "organic", "Net", "118.00", "Status", "kept");
        RunReview review = book.reviewOfRun();
        assertTrue(review.tally().waste().stream()
                .anyMatch(w -> w.layer().equals("K1") && w.stream().equals("drying-agents-silica")));
        assertEquals(List.of(), review.tally().evidence().gaps().missingLayers());
        assertTrue(use(review.tally(), "methanol").inLayersGrams() <= 118.7);
    }

    @Test
    void productFilteredOffCarriesNoSolventThatNobodyMeasured() {
        SmallBook book = reaction()
                .row("workup", "Step", "1", "Operation", "filter", "From", "RM", "Gives other", "P1+ML1")
                .row("layers", "Layer", "ML1", "Phase", "mother liquor", "Volume", "140", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "P1", "Net", "18.00");
        RunTally tally = book.tally();
        assertEquals(118.65, use(tally, "methanol").inLayersGrams(), 0.5);
        assertTrue(tally.makeUp("P1").isEmpty());
    }

    @Test
    void liquorWorkedUpForASecondCropIsNotMissing() {
        SmallBook book = reaction()
                .row("workup", "Step", "1", "Operation", "filter", "From", "RM", "Gives other", "C1+ML1")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "ML1", "Gives other", "ML1b")
                .row("workup", "Step", "3", "Operation", "filter", "From", "ML1b", "Gives other", "C2+ML2")
                .row("layers", "Layer", "ML2", "Phase", "mother liquor", "Volume", "20", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crop", "Net", "15.00", "Assay", "98")
                .row("isolated", "Lot", "C2", "Product", "P", "Stage", "crop", "Net", "2.00", "Assay", "95");
        RunReview review = book.reviewOfRun();
        assertEquals(List.of(), review.tally().evidence().gaps().missingLayers());
        assertFalse(review.findings().stream().anyMatch(f -> f.code().word().equals("liquor-not-recorded")));
    }

    @Test
    void transferOfAnUnweighedLayerTakesItsEstimateAndSaysSo() {
        SmallBook book = reaction()
                .row("workup", "Step", "1", "Operation", "filter", "From", "RM", "Gives organic", "F1")
                .row("layers", "Layer", "F1", "Phase", "organic", "Volume", "150", "Status", "kept");
        var addition = book.row("containers", "Container", "W1", "Waste stream", "non-halogenated-organic")
                .row("transfers", "Transfer", "T1", "Layer", "F1", "Container", "W1", "Status", "done")
                .review();
        var done = addition.containers().get(0).tally().done().get(0);
        assertEquals(150, done.millilitres(), 0.1);
        assertEquals(150 * 118.65 / (150 + 10 / 1.2), done.totalGrams(), 1);
        assertTrue(addition.findings().stream().anyMatch(f -> f.code().word().equals("transfer-estimated")));
    }

    @Test
    void dissolvedCarbonateStaysInThePlannedLayerAndItsMassIsThatOfItsVolume() {
        // 150 mL methanol, 10.0 g S (8.3 mL), 20.0 g carbonate (8 mL), 100 mL water, 100 mL ethyl acetate
        SmallBook book = reaction()
                .first("runs", "Status", "planned")
                .row("charges", "Material", "potassium carbonate", "Role", "base", "Formula", "K2CO3")
                .but("charges", "Actual amount", "20.0")
                .but("charges", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "dilute", "From", "RM", "Material", "water", "Volume", "100")
                .but("workup", "Gives other", "RM")
                .row("workup", "Step", "2", "Operation", "extract", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
        var layers = book.tally().plan().orElseThrow().layers();
        var aqueous =
                layers.stream().filter(l -> l.label().equals("A1")).findFirst().orElseThrow();
        assertEquals(20.0, aqueous.grams().get("potassium carbonate"), 1e-6);
        double grams = layers.stream()
                .filter(l -> !l.label().equals("RM"))
                .mapToDouble(l -> l.massGrams().orElseThrow())
                .sum();
        double millilitres = layers.stream()
                .filter(l -> !l.label().equals("RM"))
                .mapToDouble(l -> l.volumeMillilitres().orElseThrow())
                .sum();
        assertEquals(118.65 + 10 + 20 + 99.8 + 90.0, grams, 0.5);
        assertEquals(150 + 10 / 1.2 + 8 + 100 + 100, millilitres, 0.5);
    }

    @Test
    void adviceNamesTheExtractionSolventAndNotTheFirstOneCharged() {
        SmallBook book = reaction()
                .first("products", "Partition ratio", "8")
                .row("workup", "Step", "1", "Operation", "quench", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives other", "RM")
                .row("workup", "Step", "2", "Operation", "extract", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Volume", "60")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "Q1")
                .row("workup", "Step", "3", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "50", "Net", "50.5", "Status", "kept")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "20", "Unit", "mg/mL");
        var advice = book.tally().evidence().reextractions();
        assertFalse(advice.isEmpty());
        assertTrue(advice.stream().allMatch(r -> r.extractant().solvent().equals("ethyl acetate")));
    }

    private static SmallBook reaction() {
        return SmallBook.reaction()
                .row("charges", "Material", "methanol", "Role", "solvent", "Actual amount", "150", "Actual unit", "mL");
    }

    private static Map<String, Double> quenched(String test) {
        SmallBook book = reaction()
                .row("charges", "Material", "sodium borohydride", "Role", "reagent", "Formula", "NaBH4")
                .but("charges", "Actual amount", "2.00")
                .but("charges", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "quench", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Quench test", test)
                .but("workup", "Gives other", "RM1")
                .row("layers", "Layer", "RM1", "Phase", "aqueous", "Net", "180.00", "Status", "kept");
        return book.tally().makeUp("RM1").orElseThrow().grams();
    }

    private static SmallBook purified(String eluate) {
        return reaction()
                .row("workup", "Step", "1", "Operation", "concentrate", "From", "RM", "Gives other", "C1")
                .row("workup", "Step", "2", "Operation", "chromatograph", "From", "C1", "Material", "toluene")
                .but("workup", "Volume", "500")
                .but("workup", "Gives other", eluate.isEmpty() ? "P1" : "P1+" + eluate)
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00", "Assay", "90")
                .row("isolated", "Lot", "P1", "Product", "P", "Stage", "purified", "Net", "15.00", "Assay", "99");
    }

    private static SolventUse use(RunTally tally, String solvent) {
        return tally.solvents().stream()
                .filter(u -> u.solvent().equals(solvent))
                .findFirst()
                .orElseThrow();
    }

    private static double grams(SmallBook book, String layer, String component) {
        return book.tally().makeUp(layer).orElseThrow().grams().getOrDefault(component, 0.0);
    }
}
