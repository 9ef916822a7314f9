package workuptally.judgement.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;
import workuptally.tally.balance.Closure;

/** Invented cases in which something else than an assay once passed for evidence, or whole evidence was held. */
class EvidenceCasesTest {
    /** 12.00 g of 20 g isolated, the product boils at 60 °C, and its solvent was taken off into D1. */
    private static SmallBook volatileProduct() {
        return WashedRun.book().but("products", "Boiling point", "60").first("isolated", "Net", "12.00");
    }

    @Test
    void distillateOfAVolatileProductThatNobodyAssayedIsHeld() {
        RunReview run = volatileProduct().reviewOfRun();
        assertEquals(Outcome.KEEP, run.decision("D1").orElseThrow().outcome());
        assertEquals(
                List.of("layer D1"),
                run.findings().stream()
                        .filter(f -> f.severity() == Severity.HOLD)
                        .map(f -> Wording.POINT.of(f.seen()).split(":")[0])
                        .toList());
    }

    @Test
    void balanceDoesNotCloseOnADistillateThatNobodyAssayed() {
        RunReview run = volatileProduct().first("isolated", "Net", "19.80").reviewOfRun();
        assertEquals(
                Closure.Verdict.CANNOT_DECIDE, run.tally().closures().get(0).verdict());
    }

    @Test
    void distillateBesideAProductThatStaysBehindIsNoLayerToDecideAbout() {
        assertTrue(WashedRun.book().reviewOfRun().decision("D1").isEmpty());
    }

    @Test
    void layersThatWaitForTheSameAssayAreOneHold() {
        List<Finding> waits = WashedRun.book()
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150", "Coefficient", "1")
                .row("isolated", "Lot", "C9", "Product", "Q", "Stage", "crude", "From", "O2", "Net", "0.01")
                .but("isolated", "Assay", "90")
                .reviewOfRun()
                .findings()
                .stream()
                .filter(f -> f.code().word().equals("layer-waits"))
                .toList();
        assertEquals(1, waits.size());
        assertTrue(
                Wording.POINT.of(waits.get(0).seen()).startsWith("layers A1, A2: missing: an assay for Q"),
                Wording.POINT.of(waits.get(0).seen()));
    }

    @Test
    void aQuenchTestThatCannotBeReadHoldsTheLayers() {
        RunReview run = WashedRun.book().but("workup", "Quench test", "ok").reviewOfRun();
        assertEquals(Outcome.KEEP, run.decision("A1").orElseThrow().outcome());
        assertEquals(Outcome.KEEP, run.decision("A2").orElseThrow().outcome());
    }

    private static SmallBook withGrignard() {
        return WashedRun.book()
                .row(
                        "charges",
                        "Material",
                        "phenylmagnesium bromide in THF",
                        "Role",
                        "reagent",
                        "Molarity",
                        "1.00",
                        "Actual amount",
                        "10",
                        "Actual unit",
                        "mL");
    }

    private static List<String> quenchNotShown(SmallBook book) {
        return book.reviewOfRun().findings().stream()
                .filter(f -> f.code() == FindingCode.QUENCH_NOT_SHOWN)
                .map(f -> f.severity().word() + ": " + Wording.POINT.of(f.seen()))
                .toList();
    }

    @Test
    void aGrignardThatMetNoWaterHoldsEveryLayerAndOneFindingSaysWhatIsMissing() {
        SmallBook dry = withGrignard()
                .but("workup", "Operation", "extract")
                .but("workup", "Material", "tert-butyl methyl ether");
        assertEquals(
                List.of(
                        "hold: no step up to the first aqueous layer brings water or acid; charged was phenylmagnesium bromide in"
                                + " THF"),
                quenchNotShown(dry));
        for (String layer : List.of("A1", "A2")) {
            assertEquals(
                    Outcome.KEEP,
                    dry.reviewOfRun().decision(layer).orElseThrow().outcome());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"water", "sat. NH4Cl", "1 M HCl", "brine", "methanol", "10 wt% urea"})
    void whatEndsAGrignardNeedsNoTest(String material) {
        assertEquals(List.of(), quenchNotShown(withGrignard().but("workup", "Material", material)));
    }

    @Test
    void aLayerOfADensityFarFromBothPhasesIsHeldAloneUntilItIsSettled() {
        // 99.90 g in 50 mL, 2.0 g/mL, where water and ethyl acetate have 1.0 and 0.9
        SmallBook book = WashedRun.book().but("layers", "Net", "99.90");
        assertEquals(
                Outcome.KEEP, book.reviewOfRun().decision("A1").orElseThrow().outcome());
        assertEquals(
                Outcome.EVIDENCE_COMPLETE,
                book.reviewOfRun().decision("A2").orElseThrow().outcome());
    }

    @Test
    void aLayerOfWhichNoPhaseCanBeExpectedIsHeldWhereItsDensityIsFarFromEveryLiquid() {
        // the wash has no density, and 120 g in 50 mL is 2.4 g/mL where ethyl acetate has 0.9 and water 1.0
        SmallBook book = WashedRun.book().but("workup", "Material", "washing liquid of the house");
        assertEquals(
                Outcome.EVIDENCE_COMPLETE,
                book.reviewOfRun().decision("A1").orElseThrow().outcome());
        RunReview heavy = book.but("layers", "Net", "120.00").reviewOfRun();
        assertEquals(Outcome.KEEP, heavy.decision("A1").orElseThrow().outcome());
        assertEquals(
                Outcome.EVIDENCE_COMPLETE, heavy.decision("A2").orElseThrow().outcome());
    }

    /** Dried over 4.0 g of agent that weighs 12.00 g wet, 17.60 g of 20.0 g isolated; the layer itself was assayed. */
    private static SmallBook driedOverACake() {
        return SmallBook.reaction()
                .but("products", "Character", "neutral")
                .row(
                        "charges",
                        "Material",
                        "ethyl acetate",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "100",
                        "Actual unit",
                        "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "dry", "From", "O1", "Mass", "4.0", "Gives organic", "O2")
                .but("workup", "Material", "magnesium sulfate, anhydrous")
                .row(
                        "workup",
                        "Step",
                        "3",
                        "Operation",
                        "filter",
                        "From",
                        "O2",
                        "Gives organic",
                        "O3",
                        "Gives other",
                        "K1")
                .row("workup", "Step", "5", "Operation", "concentrate", "From", "O3", "Gives other", "D1+C1")
                .row(
                        "isolated",
                        "Lot",
                        "C1",
                        "Product",
                        "P",
                        "Stage",
                        "crude",
                        "From",
                        "O3",
                        "Net",
                        "17.60",
                        "Assay",
                        "100")
                .but("isolated", "Relative standard uncertainty", "1")
                .but("isolated", "Identity by", "NMR")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "70.00", "Status", "to reuse")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "12.00", "Status", "kept")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "<0.02", "Unit", "g");
    }

    @Test
    void aCakeThatNobodyRinsedSettlesNoLayer() {
        LayerDecision unrinsed = driedOverACake().reviewOfRun().decision("A1").orElseThrow();
        assertEquals(Outcome.KEEP, unrinsed.outcome());
        assertTrue(
                Wording.POINT
                        .of(unrinsed.reason())
                        .contains("; first rinse the cake and weigh the residue of the rinse"),
                Wording.POINT.of(unrinsed.reason()));
        SmallBook rinsed = driedOverACake()
                .row(
                        "workup",
                        "Step",
                        "4",
                        "Operation",
                        "rinse",
                        "From",
                        "O3",
                        "Material",
                        "ethyl acetate",
                        "Volume",
                        "30")
                .but("workup", "Gives organic", "O3");
        assertEquals(
                Outcome.KEEP, rinsed.reviewOfRun().decision("A1").orElseThrow().outcome());
    }

    @Test
    void aLotThatCameByWayOfTheOrganicLayerAsAnIonHoldsTheLayers() {
        // an amine of pKa 9.5 over 1 M HCl of pH 1 in step 1, and 99 % of theory out of the organic layer
        RunReview run = WashedRun.book()
                .but("products", "Character", "base")
                .but("products", "pKa", "9.5")
                .but("workup", "Material", "1 M HCl")
                .but("workup", "pH after", "1")
                .reviewOfRun();
        assertEquals(Outcome.KEEP, run.decision("A1").orElseThrow().outcome());
        assertEquals(
                1,
                run.findings().stream()
                        .filter(f -> f.code() == FindingCode.CONTENT_AGAINST_PH && f.severity() == Severity.HOLD)
                        .count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "<0", "n.d.", "see notebook", "-0.1"})
    void whatIsNoResultLeavesTheLayerToTheBalance(String result) {
        RunReview run = WashedRun.book()
                .but("assays", "Result", result)
                .but("assays", "Unit", "mg/mL")
                .reviewOfRun();
        assertEquals(Outcome.KEEP, run.decision("A1").orElseThrow().outcome());
        assertEquals(
                Closure.Verdict.CANNOT_DECIDE, run.tally().closures().get(0).verdict());
        assertEquals(Outcome.EVIDENCE_COMPLETE, run.decision("A2").orElseThrow().outcome());
    }

    @Test
    void rangeOfLabelsIsReadWhereEachOfThemIsWritten() {
        SmallBook book = WashedRun.book()
                .row("workup", "Step", "4", "Operation", "combine", "From", "A1-A2")
                .but("workup", "Gives aqueous", "A9");
        assertEquals(List.of("A1", "A2"), book.run().orderedSteps().get(3).from());
        assertEquals(
                List.of("A1", "A2"),
                WashedRun.book()
                        .but("assays", "Sample", "A1 to A2")
                        .run()
                        .assays()
                        .get(1)
                        .samples());
    }

    @ParameterizedTest
    @ValueSource(strings = {"O7", "A1-A5"})
    void labelThatNothingGivesIsSaid(String from) {
        List<String> seen = WashedRun.book()
                .row("workup", "Step", "4", "Operation", "combine", "From", from)
                .but("workup", "Gives aqueous", "A9")
                .reviewOfRun()
                .findings()
                .stream()
                .filter(f -> f.code().word().equals("layer-unknown-source"))
                .map(f -> Wording.POINT.of(f.seen()))
                .toList();
        assertEquals(List.of("step 4 takes " + from + ", which nothing gives"), seen);
    }

    /** A layer that was spilled after its assay is no unknown loss. */
    @Test
    void lostLayerHeldWhatItsAssayAllows() {
        List<String> seen = WashedRun.book()
                .row("layers", "Layer", "A3", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "lost")
                .row("workup", "Step", "4", "Operation", "wash", "From", "O2", "Material", "water", "Volume", "50")
                .but("workup", "Gives aqueous", "A3")
                .row("assays", "Sample", "A3", "Substance", "P", "Method", "HPLC", "Result", "<0.02", "Unit", "g")
                .reviewOfRun()
                .findings()
                .stream()
                .filter(f -> f.code() == FindingCode.LAYER_LOST)
                .map(f -> Wording.POINT.of(f.seen()))
                .toList();
        assertEquals(List.of("layer A3 is entered as lost, with at most 0.020 g of P by assay"), seen);
    }
}
