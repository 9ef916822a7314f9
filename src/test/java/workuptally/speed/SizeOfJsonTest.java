package workuptally.speed;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;
import workuptally.report.json.JsonReport;

/** What each further run adds to the JSON: a text or quantity that is said again in every run shows here. */
@Tag("slow")
class SizeOfJsonTest {
    /** A thousand runs take 20 MB at most. */
    private static final int MOST_BYTES_A_RUN = 20_000;

    private static final int WEEK = 12;

    @TempDir
    private Path folder;

    @Test
    void aThousandRunsTakeTwentyMegabytes() throws Exception {
        int added = (bytes(3 * WEEK) - bytes(2 * WEEK)) / WEEK;
        assertTrue(added < MOST_BYTES_A_RUN, added + " bytes a run");
    }

    private int bytes(int runs) throws Exception {
        Path book = folder.resolve("week-" + runs + ".xlsx");
        new ReplicatedWeek(Path.of("input-templates/demo-week"), runs).writeWorkbook(book);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JsonReport.write(new ReviewBuilder(Reference.load(), "size").review(new BookReader().read(book)), out);
        return out.size();
    }
}
