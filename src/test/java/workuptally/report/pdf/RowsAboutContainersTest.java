package workuptally.report.pdf;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.files.ReadingOptions;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Finding;
import workuptally.reference.Reference;
import workuptally.report.view.wording.Wording;
import workuptally.speed.ReplicatedWeek;

class RowsAboutContainersTest {
    private static final String COPY = "-0001";

    @TempDir
    private Path folder;

    @Test
    void findingStandsWithItsContainerAlsoWhereTheIdOfAnotherBeginsAlike() throws Exception {
        new ReplicatedWeek(Path.of("input-templates/demo-week"), 20).writeCsv(folder);
        Review review = new ReviewBuilder(Reference.load(), "test")
                .review(new BookReader(ReadingOptions.defaults()).read(folder));
        Map<String, List<Finding>> findings = new RowsAboutContainers(review).findings();
        assertTrue(findings.keySet().stream().anyMatch(id -> id.endsWith(COPY)), findings.keySet()::toString);
        findings.forEach((id, own) -> own.forEach(finding -> {
            assertTrue(
                    Wording.POINT.of(finding.seen()).contains(id), () -> id + ": " + Wording.POINT.of(finding.seen()));
            assertFalse(
                    Wording.POINT.of(finding.seen()).contains(id + COPY),
                    () -> id + ": " + Wording.POINT.of(finding.seen()));
        }));
    }
}
