package workuptally.speed;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.book.files.ReadingOptions;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Book;
import workuptally.model.Container;
import workuptally.model.Transfer;
import workuptally.reference.Reference;
import workuptally.report.json.JsonReport;
import workuptally.report.pdf.PdfReport;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.report.view.wording.Wording;
import workuptally.report.workbook.AnnotatedWorkbook;

/**
 * More runs take as much more work and no more than that: a step that looks at all runs, findings or containers for each of them would not pass.
 * Three kinds of books: the demo week again and again, for everything that there is to do for a run; {@link BareBook}s of so many runs that
 * even a short look at each one shows; a register of very many containers beside one week.
 */
@Tag("slow")
class GrowthTest {
    private static final double MOST_TIME = 1.6;

    /** Weeks are few, so that their times scatter more; a step that looks at all runs would make it nearly four. */
    private static final double MOST_TIME_WEEKS = 2.5;

    private static final int WEEK = 12;
    private static final int BARE = 2_000;
    private static final int TIMES = 4;

    @TempDir
    private Path folder;

    private static Book read(Path book) throws Exception {
        return new BookReader(ReadingOptions.defaults()).read(book);
    }

    private static Review judge(Book book) {
        return new ReviewBuilder(Reference.load(), "growth").review(book);
    }

    /** A workbook, and its review. */
    private record Reviewed(Path workbook, Review review) {
        static Reviewed of(Path workbook) throws Exception {
            return new Reviewed(workbook, judge(read(workbook)));
        }
    }

    /** The same in three sizes. */
    private static <T> Growth<T> sized(double mostTime, int base, int few, Growth.Making<Integer, T> making)
            throws Exception {
        return new Growth<>(
                        mostTime,
                        new Growth.Sized<>(base, base),
                        new Growth.Sized<>(few, few),
                        new Growth.Sized<>(TIMES * few, TIMES * few))
                .then(making);
    }

    private Path week(int runs) throws Exception {
        Path book = folder.resolve("week-" + runs + ".xlsx");
        new ReplicatedWeek(Path.of("input-templates/demo-week"), runs).writeWorkbook(book);
        return book;
    }

    @Test
    void everyStepOfAReviewGrowsWithTheNumberOfRuns() throws Exception {
        Growth<Reviewed> weeks =
                sized(MOST_TIME_WEEKS, WEEK, 3 * WEEK, this::week).then(Reviewed::of);
        weeks.assertLinear("reading and judging weeks", w -> judge(read(w.workbook())));
        weeks.assertLinear("the workbook of weeks", this::workbook);
        weeks.assertLinear("the JSON of weeks", w -> json(w.review()));
        weeks.assertLinear("the PDF of weeks", w -> pdf(w.review()));
    }

    @Test
    void noRunTakesALookAtAllOthers() throws Exception {
        Growth<Path> books =
                sized(MOST_TIME, 1, BARE, n -> BareBook.ofRuns(n).writeWorkbook(folder.resolve(n + ".xlsx")));
        books.assertLinear("reading bare runs", GrowthTest::read);
        books.then(GrowthTest::read).assertLinear("judging bare runs", GrowthTest::judge);
        Growth<Reviewed> reviews = books.then(Reviewed::of);
        reviews.assertLinear("the workbook of bare runs", this::workbook);
        reviews.assertLinear("the JSON of bare runs", r -> json(r.review()));
    }

    @Test
    void noLayerTakesALookAtAllContainers() throws Exception {
        sized(MOST_TIME, 1, BARE, n -> BareBook.ofLayersAndContainers(n).writeCsv(folder.resolve("layers-" + n)))
                .then(GrowthTest::read)
                .assertLinear("judging layers and containers", GrowthTest::judge);
    }

    /** Containers with transfers by the thousand beside one week of runs. */
    @Test
    void theRegisterGrowsWithItsContainersAndTransfers() throws Exception {
        Book week = read(Path.of("input-templates/demo-week"));
        sized(MOST_TIME, 1, BARE, n -> withContainers(week, n)).assertLinear("judging containers", GrowthTest::judge);
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

    private void workbook(Reviewed reviewed) throws Exception {
        AnnotatedWorkbook.write(reviewed.workbook(), folder.resolve("out.xlsx"), reviewed.review(), Wording.POINT);
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
