package workuptally.judgement.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/** Washes of 50 mL that nobody assayed: theory 20.0 g, 17.0 g isolated; the limits are 0.40 g for each and for all. */
class UnassayedLayersTest {
    /** A material may carry the pH of its layer behind an @. */
    private static SmallBook washes(String... materials) {
        SmallBook book = SmallBook.reaction().but("products", "Character", "neutral");
        String from = "RM";
        for (int i = 1; i <= materials.length; i++) {
            book.row(
                            "workup",
                            "Step",
                            "" + i,
                            "Operation",
                            "wash",
                            "From",
                            from,
                            "Material",
                            materials[i - 1].split("@")[0])
                    .but("workup", "Volume", "50")
                    .but("workup", "Checked by", "water drop")
                    .but("workup", "Gives organic", "O" + i)
                    .but("workup", "Gives aqueous", "A" + i)
                    .row("layers", "Layer", "A" + i, "Phase", "aqueous", "Volume", "50", "Net", "50", "Status", "kept")
                    .but(
                            "layers",
                            "pH",
                            materials[i - 1].contains("@") ? materials[i - 1].split("@")[1] : "");
            from = "O" + i;
        }
        return book.row("workup", "Step", "9", "Operation", "concentrate", "From", from, "Gives other", "D1+C1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", from, "Net", "17.00")
                .but("isolated", "Assay", "100")
                .but("isolated", "Identity by", "NMR")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "70.00", "Status", "to reuse");
    }

    private static List<Finding> holds(SmallBook book) {
        return book.reviewOfRun().findings().stream()
                .filter(f -> f.severity() == Severity.HOLD)
                .toList();
    }

    @Test
    void washesThatNobodyAssayedAreOneLineWithOneSampleThatSettlesThem() {
        List<Finding> holds = holds(washes("water", "water", "sodium chloride", "water"));
        assertEquals(1, holds.size(), holds::toString);
        assertEquals("layers-not-assayed", holds.get(0).code().word());
        assertTrue(
                Wording.POINT.of(holds.get(0).seen()).startsWith("A1 to A4 not assayed: up to "),
                Wording.POINT.of(holds.get(0).seen()));
        // 0.40 g in 200 mL is 2.0 mg/mL; less 1.645·u with 2 % of the assay, 1.2 % of a volume and the theory: 1.9,
        // rounded down
        assertEquals(
                "Keep them; one composite sample of A1 to A4, 1 % of each diluted into methanol, settles all 4 if it is below"
                        + " 1.9 mg/mL.",
                Wording.POINT.of(holds.get(0).action()));
    }

    /** Chloramines and nitrogen trichloride, fire, hydrogen: what a closed vial must not be asked to hold (reactivity-pairs.csv). */
    @ParameterizedTest
    @CsvSource({"10 wt% urea, bleach 5 wt%", "10 wt% glycerol, 5 wt% KMnO4", "10 wt% NaBH4, 1 M HCl"})
    void whatTheWashesBroughtIsNotPooled(String first, String second) {
        List<Finding> holds = holds(washes(first, second)).stream()
                .filter(f -> f.code() == FindingCode.LAYERS_NOT_ASSAYED)
                .toList();
        assertEquals(1, holds.size(), holds::toString);
        String action = Wording.POINT.of(holds.get(0).action());
        assertFalse(action.contains("composite"), action);
    }

    @Test
    void acidByItsPhIsNotPooledWithABaseWhateverWashedItOut() {
        assertTrue(actions(washes("water@6", "water@7")).contains("composite"));
        assertFalse(actions(washes("water@1.0", "water@8.2")).contains("composite"));
    }

    private static String actions(SmallBook book) {
        return holds(book).stream().map(f -> Wording.POINT.of(f.action())).collect(Collectors.joining("; "));
    }

    @Test
    void theResultAskedForSettlesThemIndeed() {
        SmallBook book = washes("water", "water", "sodium chloride", "water")
                .row("assays", "Sample", "A1+A2+A3+A4", "Substance", "P", "Method", "HPLC", "Result", "1.89")
                .but("assays", "Unit", "mg/mL");
        RunReview run = book.reviewOfRun();
        for (String label : List.of("A1", "A2", "A3", "A4")) {
            LayerDecision decision = run.decision(label).orElseThrow();
            assertTrue(
                    decision.conditions().stream()
                            .filter(c -> c.id().equals("R4") || c.id().equals("R5"))
                            .allMatch(c -> c.state() == LayerDecision.State.MET),
                    decision::toString);
        }
    }

    @Test
    void aSampleBelowTheLimitCompletesTheEvidence() {
        SmallBook book = washes("water", "water", "sodium chloride", "water")
                .but("isolated", "Assay", "100")
                .row("assays", "Sample", "A1+A2+A3+A4", "Substance", "P", "Method", "HPLC", "Result", "<0.10")
                .but("assays", "Unit", "mg/mL");
        book.first("isolated", "Net", "19.90");
        RunReview run = book.reviewOfRun();
        assertEquals(4, run.decisions().size());
        run.decisions().forEach(d -> assertEquals(Outcome.EVIDENCE_COMPLETE, d.outcome(), d::toString));
        assertTrue(run.findings().stream().noneMatch(f -> f.severity() == Severity.HOLD));
    }

    @Test
    void acidAndCarbonateAreNeverProposedTogether() {
        Finding hold = holds(washes("1 M HCl", "water", "sodium carbonate", "water")).stream()
                .filter(f -> f.code().word().equals("layers-not-assayed"))
                .findFirst()
                .orElseThrow();
        assertTrue(
                Wording.POINT.of(hold.action()).contains("A1, A2, A4")
                        && Wording.POINT.of(hold.action()).contains("A3"),
                Wording.POINT.of(hold.action()));
        assertFalse(Wording.POINT.of(hold.action()).contains("A1 to A4"), Wording.POINT.of(hold.action()));
    }

    @Test
    void noneIsProposedBelowTheDetectionLimit() {
        Finding hold = holds(washes("water", "water").limit("Detection limit HPLC", "5")).stream()
                .filter(f -> f.code().word().equals("layers-not-assayed"))
                .findFirst()
                .orElseThrow();
        assertEquals("Keep them; assay them one by one.", Wording.POINT.of(hold.action()));
    }
}
