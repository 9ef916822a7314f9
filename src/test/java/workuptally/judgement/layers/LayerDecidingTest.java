package workuptally.judgement.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.model.Phrase;
import workuptally.report.view.wording.Wording;

class LayerDecidingTest {
    @Test
    void everyConditionMetIsEvidenceComplete() {
        LayerDecision decision = WashedRun.decision(WashedRun.book());
        assertEquals(Outcome.EVIDENCE_COMPLETE, decision.outcome());
        // 0.10 g × (1 + 1.645 × 0.02) = 0.10329 g.
        assertEquals("at most 0.11 g P = 0.52 % of theory, limit 2.0 %", Wording.POINT.of(decision.reason()));
    }

    /** A lot of 19.10 g is 95.5 % of theory; A1 adds 0.5 %, A2 half of 0.1 %: 96.05 %. */
    @Test
    void completeLayerOfABalanceThatDoesNotCloseSaysSo() {
        LayerDecision decision = WashedRun.decision(WashedRun.book().first("isolated", "Net", "19.10"));
        assertEquals(Outcome.EVIDENCE_COMPLETE, decision.outcome());
        assertEquals(
                "at most 0.11 g P = 0.52 % of theory, limit 2.0 %; balance on S open, 96.1 ± 2.0 %",
                Wording.POINT.of(decision.reason()));
    }

    @Test
    void mostThatALayerHoldsStandsInFiguresBesideTheWords() {
        LayerDecision decision = WashedRun.decision(WashedRun.book());
        LayerDecision.AtMost most = decision.atMost().orElseThrow();
        assertEquals("P", most.product());
        // 0.10 g × (1 + 1.645 × 0.02); of 20.0 g (u 0.36 %): 0.5 × (1 + 1.645 × √(0.02² + (1.0329 × 0.0036)²)) %
        assertEquals(0.10329, most.grams(), 1e-5);
        assertEquals(0.51673, most.percentOfTheory(), 1e-4);
    }

    @Test
    void oneConditionNotMetKeepsTheLayer() {
        LayerDecision decision = WashedRun.decision(WashedRun.book().but("assays", "Result", "0.60"));
        assertEquals(Outcome.KEEP, decision.outcome());
        assertTrue(
                Wording.POINT.of(decision.reason()).contains("at most 0.62 g P"), Wording.POINT.of(decision.reason()));
    }

    @Test
    void oneConditionMissingAsksForAMeasurementFirst() {
        LayerDecision decision = WashedRun.decision(WashedRun.book().but("layers", "Volume", ""));
        assertEquals(Outcome.MEASURE_FIRST, decision.outcome());
        assertEquals(1, decision.missing().size());
    }

    @Test
    void notMetGoesBeforeMissing() {
        SmallBook book = WashedRun.book().but("layers", "Volume", "").but("assays", "Result", "0.60");
        assertEquals(Outcome.KEEP, WashedRun.decision(book).outcome());
    }

    @Test
    void conditionsAboutATransferDoNotDecideAboutTheLayer() {
        SmallBook book = WashedRun.book()
                .but("layers", "pH", "7")
                .row("containers", "Container", "W1", "Waste stream", "halogenated-organic", "Capacity", "10")
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W1", "Status", "proposed");
        assertEquals(Outcome.EVIDENCE_COMPLETE, WashedRun.decision(book).outcome());
    }

    @Test
    void thereAreTwelveConditionsInOrder() {
        assertEquals(
                List.of("R1", "R2", "R3", "R4", "R5", "R6", "R7", "R8", "R9", "R10", "R11", "R12"),
                WashedRun.decision(WashedRun.book()).conditions().stream()
                        .map(LayerDecision.Condition::id)
                        .toList());
    }

    @Test
    void onlyKeptLiquidsAreDecidedAbout() {
        // D1 is a distillate, O1 and O2 were used; A9, set aside to be re-used, is there all the same, A8 is lost.
        SmallBook book = WashedRun.book();
        book.row("layers", "Layer", "A9", "Phase", "aqueous", "Net", "1.00", "Status", "to reuse");
        book.row("layers", "Layer", "A8", "Phase", "aqueous", "Net", "1.00", "Status", "lost");
        assertEquals(
                List.of("A1", "A2", "A9"),
                book.reviewOfRun().decisions().stream()
                        .map(LayerDecision::layer)
                        .toList());
    }

    @Test
    void distillateToReuseThatHoldsProductIsKept() {
        SmallBook book = WashedRun.book()
                .row("assays", "Sample", "D1", "Substance", "P", "Method", "GC", "Result", "9.00", "Unit", "g");
        assertEquals(Outcome.KEEP, WashedRun.decision(book, "D1").outcome());
    }

    @Test
    void plannedRunHasNoDecisions() {
        SmallBook plan = SmallBook.reaction()
                .first("runs", "Status", "planned")
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Planned amount", "90.00")
                .but("charges", "Planned unit", "g")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous");
        assertEquals(List.of(), plan.reviewOfRun().decisions());
    }

    @Test
    void pooledLayerIsNotLetGoOnTheAssayOfOneOfItsParts() {
        // A1 (0.10 g) and A2, which nobody assayed, put together to A3.
        SmallBook book = WashedRun.book()
                .but("isolated", "Assay", "")
                .row("workup", "Step", "4", "Operation", "combine", "From", "A1+A2", "Gives aqueous", "A3")
                .row("layers", "Layer", "A3", "Phase", "aqueous", "Volume", "100", "Net", "99.80", "Status", "kept")
                .first("assays", "Substance", "S");
        LayerDecision decision = WashedRun.decision(book, "A3");
        assertNotEquals(Outcome.EVIDENCE_COMPLETE, decision.outcome());
        assertTrue(
                decision.missing().contains(Phrase.of("assay of {}", "A3")),
                decision.missing().toString());
    }

    /** A note that nobody's list knows stands beside the layer, once; words of every day do not. */
    @ParameterizedTest
    @CsvSource({
        "layers,smells of garlic,note not read: 'smells of garlic'",
        "assays,other column,note not read: 'other column'",
        "layers,brine wash,''",
        "layers,'clear, pale yellow',''",
        "layers,both portions combined as A2,''",
        "layers,A1?,note not read: 'A1?'"
    })
    void aNoteThatWasNotReadStandsBesideALayerThatIsComplete(String table, String note, String silence) {
        RunReview run = WashedRun.book().but(table, "Notes", note).reviewOfRun();
        assertEquals(Outcome.EVIDENCE_COMPLETE, run.decision("A1").orElseThrow().outcome());
        assertEquals(silence, Wording.POINT.of(run.decision("A1").orElseThrow().silence()));
    }
}
