package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.report.view.lines.ProposalLine;
import workuptally.report.view.wording.Wording;

/** A layer that has left before its evidence is complete is not there to be kept (common practice: what was poured cannot be measured). */
class LeftEarlyTest {
    private static final List<FindingCode> OF_LAYERS = List.of(
            FindingCode.LAYER_LEFT_EARLY,
            FindingCode.LAYER_HOLDS_PRODUCT,
            FindingCode.LAYERS_NOT_ASSAYED,
            FindingCode.LAYER_WAITS);

    private static SmallBook washed(String status, String assay) {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water")
                .but("workup", "Volume", "30")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row(
                        "layers", "Layer", "A1", "Phase", "aqueous", "Volume", "30", "Net", "30", "pH", "7", "Status",
                        status)
                .row("containers", "Container", "W-2", "Waste stream", "aqueous", "Capacity", "10");
        book.row("isolated", "Lot", "C1", "Product", "P", "Net", "19.9", "Stage", "crude", "Status", "kept")
                .row("assays", "Sample", "C1", "Substance", "P", "Method", "HPLC", "Result", "99.5", "Unit", "%");
        return assay.isEmpty()
                ? book
                : book.row(
                        "assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", assay, "Unit", "mg/mL");
    }

    private static SmallBook moved(SmallBook book, String amount, String status) {
        return book.row("transfers", "Transfer", "T3", "Layer", "A1", "Container", "W-2", "Amount", amount)
                .but("transfers", "Date", "2026-02-03")
                .but("transfers", "Status", status);
    }

    private static String codes(Review review) {
        return review.findings().stream()
                .filter(f ->
                        OF_LAYERS.contains(f.code()) && f.subject().layers().contains("A1"))
                .map(Finding::code)
                .map(FindingCode::word)
                .sorted()
                .collect(Collectors.joining("; "));
    }

    @Test
    void whatIsThereIsKept() {
        assertEquals(
                "layer-waits", codes(moved(washed("kept", ""), "30", "proposed").review()));
    }

    @ParameterizedTest
    @CsvSource({"released,proposed,30", "kept,done,30", "kept,done,''", "released,done,30", "consumed,proposed,30"})
    void whatIsGoneIsSaidToBeGone(String layer, String transfer, String amount) {
        Review review = moved(washed(layer, ""), amount, transfer).review();
        assertEquals("layer-left-early", codes(review));
        assertTrue(review.runs().get(0).nextTests().stream()
                .noneMatch(t -> t.samples().contains("A1")));
    }

    @Test
    void whereAPartIsGoneTheRestIsKept() {
        assertEquals(
                "layer-left-early; layer-waits",
                codes(moved(washed("kept", ""), "10", "done").review()));
    }

    @Test
    void theTransferSaysSo() {
        Review review = moved(washed("kept", ""), "30", "done").review();
        assertEquals(
                List.of("left before its evidence was complete"),
                ProposalLine.againstMade(review).get("T3").stream()
                        .filter(reason -> reason.startsWith("left"))
                        .toList());
        String seen = review.findings().stream()
                .filter(f -> f.code() == FindingCode.LAYER_LEFT_EARLY)
                .map(f -> Wording.POINT.of(f.seen()))
                .findFirst()
                .orElse("");
        assertTrue(seen.contains("T3 into W-2, 2026-02-03"), seen);
    }

    @Test
    void aLayerWithItsEvidenceMayHaveLeft(@TempDir Path folder) throws Exception {
        Review review = ExampleBook.clean()
                .with("layers", "63.11,,,kept", "63.11,,,released")
                .review(folder);
        assertEquals(
                List.of(),
                review.findings().stream()
                        .filter(f -> f.code() == FindingCode.LAYER_LEFT_EARLY)
                        .toList());
        assertTrue(review.runs().get(0).decisions().stream()
                .anyMatch(d -> d.departure().isPresent()));
    }
}
