package workuptally.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.ReadingOptions;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.reference.Reference;
import workuptally.report.json.JsonReport;
import workuptally.report.pdf.PdfOptions;
import workuptally.report.pdf.PdfReport;
import workuptally.report.workbook.AnnotatedWorkbook;

/**
 * Four times the runs take about four times the work. Processor time of this thread is counted, not time on the clock, and only the ratio
 * of two sizes: a step that looks at every run for every run would make it sixteen. The bound lies between, wide enough for a
 * busy machine.
 */
class GrowthTest {
    private static final int SMALL = 60;
    private static final int LARGE = 4 * SMALL;
    private static final double MOST = 12;
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @TempDir
    private Path folder;

    private interface Work {
        void run() throws Exception;
    }

    private Path book(int runs) throws Exception {
        Path book = folder.resolve(runs + ".xlsx");
        new ReplicatedWeek(Path.of("input-templates/demo-week"), runs).writeWorkbook(book);
        return book;
    }

    private Review review(Path book) throws Exception {
        return new ReviewBuilder(Reference.load(), "growth")
                .review(new BookReader(ReadingOptions.defaults()).read(book));
    }

    /** The lesser of two, since what else the machine does only ever adds. */
    private static double least(Work work) throws Exception {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 2; i++) {
            long start = THREADS.getCurrentThreadCpuTime();
            work.run();
            least = Math.min(least, THREADS.getCurrentThreadCpuTime() - start);
        }
        return least;
    }

    private static void assertLinear(String what, Work small, Work large) throws Exception {
        large.run(); // compiled before it is measured
        double ratio = least(large) / least(small);
        assertTrue(ratio <= MOST, what + " grows by " + ratio);
    }

    @Test
    void everyStepOfAReviewGrowsWithTheNumberOfRuns() throws Exception {
        Path small = book(SMALL);
        Path large = book(LARGE);
        Review few = review(small);
        Review many = review(large);
        assertEquals(LARGE, many.runs().size());
        assertLinear("reading and judging", () -> review(small), () -> review(large));
        Path out = folder.resolve("out.xlsx");
        assertLinear(
                "the workbook",
                () -> AnnotatedWorkbook.write(small, out, few),
                () -> AnnotatedWorkbook.write(large, out, many));
        assertLinear("the JSON", () -> json(few), () -> json(many));
        assertLinear("the PDF", () -> pdf(few), () -> pdf(many));
    }

    private void json(Review review) throws Exception {
        try (OutputStream out = Files.newOutputStream(folder.resolve("out.json"))) {
            JsonReport.write(review, out);
        }
    }

    private void pdf(Review review) throws Exception {
        PdfOptions options = new PdfOptions(PdfOptions.Paper.A4, PdfOptions.DecimalMark.POINT, Optional.empty());
        try (OutputStream out = Files.newOutputStream(folder.resolve("out.pdf"))) {
            PdfReport.write(review, options, out);
        }
    }
}
