package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.measure.Readings;
import workuptally.model.Layer;
import workuptally.model.Limits;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Addition;
import workuptally.tally.amounts.Ingredients;
import workuptally.tally.amounts.Substances;
import workuptally.tally.balance.Closure;
import workuptally.tally.balance.Closure.Verdict;
import workuptally.tally.waste.SolventUse;

/** 90 g of ethyl acetate washed with 50 g of water, and what becomes of a phase that the step does not label. */
class LayerFlowTest {
    @ParameterizedTest
    @CsvSource({"O1,,aqueous layer of step 1", ",A1,organic layer of step 1"})
    void phaseWithoutALabelIsKeptUnderAName(String organic, String aqueous, String name) {
        SmallBook book = washed(organic, aqueous);
        LayerFlow flow = flow(book);
        assertEquals(
                List.of(name),
                flow.unlabelledPhases().stream().map(UnlabelledPhase::name).toList());
        LayerFlow.Phases phases =
                flow.phases(flow.unlabelledPhases().get(0).step()).orElseThrow();
        Ingredients left = organic == null ? phases.organic() : phases.aqueous();
        assertEquals(left.totalGrams(), flow.portion(name).totalGrams(), 1e-9);
        assertTrue(left.totalGrams() > 40);
    }

    /**
     * 50 g of buds and 600 g of water, steam-distilled: 390 g of wet buds stay in the pot, 340 g of it water, so that 260 g went over and
     * stand in the funnel with the solvent, by hand.
     */
    @Test
    void waterThatStaysInThePotIsNotInTheSteamDistillate() {
        SmallBook book = SmallBook.empty()
                .row(
                        "charges",
                        "Material",
                        "clove buds",
                        "Role",
                        "component",
                        "Actual amount",
                        "50",
                        "Actual unit",
                        "g")
                .row("charges", "Material", "water", "Role", "solvent", "Actual amount", "600", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "distil", "From", "RM", "Gives other", "H1+P0")
                .row(
                        "workup",
                        "Step",
                        "2",
                        "Operation",
                        "extract",
                        "From",
                        "H1",
                        "Material",
                        "ethyl acetate",
                        "Volume",
                        "40",
                        "Gives organic",
                        "O1",
                        "Gives aqueous",
                        "A1")
                .row("layers", "Layer", "P0", "Phase", "solid", "Net", "390", "Status", "kept");
        LayerFlow flow = flow(book);
        assertEquals(260, flow.portion("H1").grams(IngredientAccount.WATER), 1);
        assertEquals(340, flow.portion("P0").grams(IngredientAccount.WATER), 1);
        LayerFlow unweighed = flow(book.but("layers", "Net", ""));
        assertEquals(600, unweighed.portion("H1").grams(IngredientAccount.WATER), 1e-9);
    }

    @Test
    void solventOfAPhaseWithoutALabelStandsInLayers() {
        // 7.7 % of a saturated water layer: 50.00 × 7.7/92.3 = 4.17118 g (Merck Index, as quoted in the solvent table).
        SolventUse use = washed("O1", "")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "O1", "Gives other", "D1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "70.00", "Status", "to reuse")
                .but("layers", "Composition", "ethyl acetate 98 %")
                .tally()
                .solvents()
                .get(0);
        assertEquals(4.17118, use.inLayersGrams(), 1e-4);
    }

    @Test
    void phaseWithoutALabelHoldsTheOtherLayersAndLeavesTheBalanceUndecided() {
        SmallBook book = isolated(washed("O1", ""));
        Closure closure = book.tally().closures().get(0);
        assertEquals(Verdict.CANNOT_DECIDE, closure.verdict());
        assertTrue(closure.candidates().stream().anyMatch(c -> c.place().equals("aqueous layer of step 1")));
        assertEquals(
                List.of("aqueous layer of step 1"),
                book.tally().evidence().gaps().missingLayers());
        RunReview review = book.reviewOfRun();
        assertTrue(review.findings().stream()
                .anyMatch(f -> f.code().word().equals("layer-missing")
                        && f.severity() == Severity.HOLD
                        && Wording.POINT.of(f.seen()).equals("step 1 (water) gives no label to its aqueous layer")));
    }

    @Test
    void contactWithBothLabelsLeavesNothingUnlabelled() {
        SmallBook book = isolated(washed("O1", "A1"));
        assertEquals(List.of(), flow(book).unlabelledPhases());
        assertFalse(book.reviewOfRun().findings().stream()
                .anyMatch(f -> Wording.POINT.of(f.seen()).contains("gives no label")));
    }

    @Test
    void phaseThatALaterStepTakesUnderItsOldLabelGoesOn() {
        SmallBook book = washed("O1", "")
                .row(
                        "workup",
                        "Step",
                        "2",
                        "Operation",
                        "extract",
                        "From",
                        "RM",
                        "Material",
                        "toluene",
                        "Mass",
                        "40.00")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2");
        LayerFlow flow = flow(book);
        assertEquals(List.of(), flow.unlabelledPhases());
        assertEquals(4.17118, flow.portion("RM").grams("ethyl acetate"), 1e-4);
        assertEquals(40.00, flow.portion("O2").grams("toluene"), 0.1);
    }

    @Test
    void stepWithoutAnyLabelLeavesTheWashedPhaseWhereItWas() {
        LayerFlow flow = flow(washed("", ""));
        assertEquals("aqueous layer of step 1", flow.unlabelledPhases().get(0).name());
        assertEquals(90 - 4.17118, flow.portion("RM").grams("ethyl acetate"), 1e-4);
    }

    @Test
    void liquidUnderGivesOtherIsThePhaseThatItsRowNames() {
        SmallBook book = washed("", "")
                .but("workup", "Gives other", "X1+X2")
                .row("layers", "Layer", "X1", "Phase", "aqueous", "Status", "kept")
                .row("layers", "Layer", "X2", "Phase", "organic", "Status", "kept");
        LayerFlow flow = flow(book);
        assertEquals(List.of(), flow.unlabelledPhases());
        assertEquals(4.17118, flow.portion("X1").grams("ethyl acetate"), 1e-4);
        assertEquals(90 - 4.17118, flow.portion("X2").grams("ethyl acetate"), 1e-4);
    }

    @Test
    void ragIsNotTakenForThePhaseThatIsMissing() {
        SmallBook book = washed("O1", "")
                .but("workup", "Gives other", "R1")
                .row("layers", "Layer", "R1", "Phase", "rag", "Volume", "5", "Status", "kept");
        assertEquals(Layer.Phase.AQUEOUS, flow(book).unlabelledPhases().get(0).phase());
    }

    @Test
    void liquidThatMixesWithWaterIsOnePhase() {
        SmallBook book = washed("", "A1").first("charges", "Material", "S");
        book.but("charges", "Material", "methanol").but("charges", "Actual amount", "10.00");
        assertTrue(flow(book).portion("A1").grams("water") > 49);
    }

    private static LayerFlow flow(SmallBook book) {
        RunTally tally = book.tally();
        Substances substances = SmallBook.substances();
        List<Addition> additions = new AdditionAccount(
                        tally.run(), new Readings(), Limits.defaults(), LayerGraph.of(tally.run()), substances)
                .list();
        return LayerFlow.of(LayerGraph.of(tally.run()), substances, tally.amounts(), additions, tally.layers());
    }

    private static SmallBook isolated(SmallBook book) {
        return book.row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O1", "Net", "18.00")
                .but("isolated", "Assay", "100");
    }

    private static SmallBook washed(String organic, String aqueous) {
        return SmallBook.reaction()
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Actual amount", "90.00")
                .but("charges", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Mass", "50.00")
                .but("workup", "Gives organic", organic == null ? "" : organic)
                .but("workup", "Gives aqueous", aqueous == null ? "" : aqueous);
    }

    /** Weighed, not measured, an acid adds its volume as well: 15.0 g of 96 % acid is 8.2 mL (1.84 g/mL, CRC Handbook). */
    @Test
    void solutionChargedByMassHasAVolume() {
        LayerIdentity identity = SmallBook.empty()
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .row(
                        "charges",
                        "Material",
                        "sulfuric acid 96 wt%",
                        "Role",
                        "catalyst",
                        "Formula",
                        "H2SO4",
                        "Actual amount",
                        "15.0",
                        "Actual unit",
                        "g",
                        "Assay",
                        "96")
                .row("workup", "Step", "1", "Operation", "dilute", "From", "RM", "Material", "water", "Volume", "100")
                .row("workup", "Step", "2", "Operation", "extract", "From", "RM", "Material", "MTBE", "Volume", "60")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "108", "Net", "116.00", "Status", "kept")
                .tally()
                .identity("A1")
                .orElseThrow();
        // 14.4 g of acid in 115 g, 12.5 %: 1.084 g/mL
        assertEquals(1.06, identity.expectedAqueous().lowGramsPerMillilitre(), 0.05);
        assertEquals(1.06, identity.expectedAqueous().highGramsPerMillilitre(), 0.05);
    }
}
