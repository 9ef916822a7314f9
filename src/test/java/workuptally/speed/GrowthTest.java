package workuptally.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.ReadingOptions;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Book;
import workuptally.model.Container;
import workuptally.model.Transfer;
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

    private static final int REGISTER_SMALL = 4_000;
    private static final int REGISTER_TIMES = 8;
    private static final double REGISTER_MOST = 12;
    private static final int REGISTER_ATTEMPTS = 3;

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
            least = Math.min(least, once(work));
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

    /**
     * Containers and transfers by the thousand beside one week of runs: beside the work that ten thousand runs make, a look at all
     * transfers for each container would not show.
     */
    @Test
    void theRegisterGrowsWithItsContainersAndTransfers() throws Exception {
        Book week = new BookReader(ReadingOptions.defaults()).read(Path.of("input-templates/demo-week"));
        Book few = withContainers(week, REGISTER_SMALL);
        Book many = withContainers(week, REGISTER_TIMES * REGISTER_SMALL);
        double small = Double.MAX_VALUE;
        double large = Double.MAX_VALUE;
        once(() -> judge(few)); // compiled before it is measured
        for (int attempt = 0; attempt < REGISTER_ATTEMPTS; attempt++) {
            large = Math.min(large, once(() -> judge(many)));
            small = Math.min(small, once(() -> judge(few)));
        }
        double ratio = large / small;
        assertTrue(ratio <= REGISTER_MOST, "judging containers grows by " + ratio);
    }

    /** The first container and the first transfer of the week, again and again under new ids. */
    private static Book withContainers(Book week, int count) {
        Container container = week.containers().get(0);
        Transfer transfer = week.transfers().get(0);
        List<Container> containers = new ArrayList<>();
        List<Transfer> transfers = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            containers.add(new Container(
                    "W" + i,
                    container.wasteStream(),
                    container.capacityLitres(),
                    container.tareGrams(),
                    container.weighedOn(),
                    container.grossThenGrams(),
                    container.contentsThen(),
                    container.opened(),
                    container.location(),
                    container.contact(),
                    container.row()));
            transfers.add(new Transfer(
                    "T" + i,
                    transfer.run(),
                    transfer.layers(),
                    transfer.material(),
                    "W" + i,
                    transfer.massGrams(),
                    transfer.status(),
                    transfer.by(),
                    transfer.date(),
                    transfer.row()));
        }
        return new Book(
                week.name(),
                week.files(),
                week.runs(),
                containers,
                transfers,
                week.vesselTares(),
                week.history(),
                week.corrections(),
                week.limits(),
                week.findings());
    }

    private static double once(Work work) throws Exception {
        long start = THREADS.getCurrentThreadCpuTime();
        work.run();
        return THREADS.getCurrentThreadCpuTime() - start;
    }

    private static void judge(Book book) {
        new ReviewBuilder(Reference.load(), "growth").review(book);
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
