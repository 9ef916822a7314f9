package workuptally.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.judgement.RunReview;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.tally.balance.Closure;

/** One entry of the invented demo week changed, and what must follow from it. */
class DemoWeekChangedTest {
    @TempDir
    Path folder;

    /** The demo week with one piece of text in one table replaced. */
    private Review with(String table, String old, String replacement) throws Exception {
        try (Stream<Path> files = Files.list(Path.of("input-templates", "demo-week"))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        }
        replace(folder.resolve(table), old, replacement);
        return new ReviewBuilder(Reference.load(), "test").review(new BookReader().read(folder));
    }

    private static void replace(Path file, String old, String replacement) throws IOException {
        String text = Files.readString(file);
        assertTrue(text.contains(old), () -> "no '" + old + "'");
        Files.writeString(file, text.replace(old, replacement));
    }

    private static RunReview run(Review review, String id) {
        return review.runs().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
    }

    private static List<String> codes(Review review, String id, Severity severity) {
        return run(review, id).findings().stream()
                .filter(f -> f.severity() == severity)
                .map(f -> f.code().word())
                .distinct()
                .toList();
    }

    @Test
    void densityOfOneForDichloromethaneLeavesTheLayersUndecided() throws Exception {
        Review review = with("charges.csv", "1.326", "1.0");
        assertTrue(!codes(review, "R26-045", Severity.STOP).contains("layers-swapped"));
        assertTrue(codes(review, "R26-045", Severity.NOTE).contains("layer-identity-unclear"));
    }

    @Test
    void widerCoverageLetsTheHydrolysisClose() throws Exception {
        Review review = with("limits.csv", "Coverage factor,2,", "Coverage factor,3,");
        assertEquals(
                Closure.Verdict.CLOSES,
                run(review, "R26-042").tally().closures().get(0).verdict());
        assertTrue(!codes(review, "R26-042", Severity.NOTE).contains("closure-open"));
    }

    @Test
    void consumedLayerSaidToBeKeptStops() throws Exception {
        Review review = with("layers.csv", "consumed,,acid extraction; basified", "kept,,acid extraction; basified");
        assertTrue(codes(review, "R26-041", Severity.STOP).contains("layer-said-kept"));
    }

    @Test
    void copiedLayerRowIsADuplicateVessel() throws Exception {
        String row = "R26-042,A2,aqueous,lower,E-08,21,85.15,60.26,,21,4.4,,TB-2,,2026-03-02,,kept,,brine wash\n";
        Review review = with("layers.csv", row, row + row);
        assertTrue(codes(review, "R26-042", Severity.STOP).stream().anyMatch(c -> c.startsWith("vessel-duplicate")));
    }

    @Test
    void removedLayerRowIsMissedAndHoldsTheRun() throws Exception {
        Review review = with(
                "layers.csv",
                "R26-042,A1,aqueous,lower,E-07,104,214.33,105.62,,21,5.6,,TB-2,,2026-03-02,,kept,,aqueous after extraction\n",
                "");
        assertTrue(codes(review, "R26-042", Severity.HOLD).contains("layer-missing"));
        assertEquals(
                Closure.Verdict.CANNOT_DECIDE,
                run(review, "R26-042").tally().closures().get(0).verdict());
    }

    @Test
    void coefficientOfOneInTheDisproportionationIsSuspected() throws Exception {
        Review review = with("charges.csv", "C7H5ClO,140.57,2,", "C7H5ClO,140.57,1,");
        assertTrue(codes(review, "R26-052", Severity.CHECK).contains("coefficient-suspect"));
    }

    @Test
    void correctedMolarMassLeavesNoStop() throws Exception {
        Review review = with("charges.csv", "C7H10ClN,107.15", "C7H10ClN,143.61");
        assertEquals(List.of(), codes(review, "R26-044", Severity.STOP));
    }
}
