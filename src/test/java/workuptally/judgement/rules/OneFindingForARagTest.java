package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision.Outcome;

/** A rag that nobody assayed is one cause: it is told once, and stays on hold. */
class OneFindingForARagTest {
    private static RunReview review(String assay) {
        SmallBook book = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "12.00", "Assay", "100")
                .row("layers", "Layer", "R1", "Phase", "rag", "Volume", "8", "Status", "kept")
                .but("layers", "Net", "8");
        if (!assay.isEmpty()) {
            book.row("assays", "Sample", "R1", "Substance", "P", "Method", "HPLC", "Result", assay, "Unit", "mg/mL");
        }
        return book.reviewOfRun();
    }

    private static List<String> aboutTheRag(RunReview run) {
        return run.findings().stream()
                .map(f -> f.code().word())
                .filter(code -> code.equals("rag-not-assayed")
                        || code.equals("layer-holds-product")
                        || code.equals("layer-waits"))
                .toList();
    }

    @Test
    void unassayedRagIsToldOnceAndKept() {
        RunReview run = review("");
        assertEquals(List.of("rag-not-assayed"), aboutTheRag(run));
        assertNotEquals(Outcome.EVIDENCE_COMPLETE, run.decisions().get(0).outcome());
    }

    @Test
    void assayedRagThatHoldsProductIsToldByItsContent() {
        assertEquals(List.of("layer-holds-product"), aboutTheRag(review("200")));
    }
}
