package workuptally.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A large book is reviewed in a small heap: what is kept of each run stays small. */
@Tag("slow")
class HeapTest {
    private static final int RUNS = 500;

    /**
     * Heap of the program, of which a small part is set apart for new objects, so that nearly all of it is there for what lives. 1000 runs
     * needed 79 MB (Debian 12, JDK 17): up to 71 MB live while the workbook is written, of which 24 MB are the review and 6 MB the
     * reference data; 500 runs need some 47 MB, and would need all of this heap with twice as much for each run. What is packed at once
     * grows with the processors.
     */
    private static final List<String> HEAP = List.of("-Xmx85m", "-Xmn8m", "-XX:ActiveProcessorCount=2");

    /** A heap that is just too small does not end the program at once: it collects garbage all the time. */
    private static final int MOST_SECONDS = 150;

    @TempDir
    private Path folder;

    @Test
    void fiveHundredRunsAreReviewedInASmallHeap() throws Exception {
        Path book = folder.resolve("week.xlsx");
        new ReplicatedWeek(Path.of("input-templates/demo-week"), RUNS).writeWorkbook(book);
        Path log = folder.resolve("log");
        Process review = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        HEAP.get(0),
                        HEAP.get(1),
                        HEAP.get(2),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "workuptally.cli.WorkupTally",
                        "review",
                        book.toString(),
                        "--reports",
                        "workbook,json",
                        "--quiet")
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        boolean ended = review.waitFor(MOST_SECONDS, TimeUnit.SECONDS);
        review.destroyForcibly().waitFor();
        assertTrue(ended, "the review was not done in " + MOST_SECONDS + " s with " + HEAP);
        assertEquals(0, review.exitValue(), Files.readString(log));
        assertTrue(Files.exists(folder.resolve("week-review.xlsx")));
        assertTrue(Files.exists(folder.resolve("week-review.json")));
    }
}
