package workuptally.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.report.pdf.layout.PdfOptions;

/** Writes invented reviews and periods of every size as files to look at; its argument is the folder. */
public final class PreviewReports {
    private PreviewReports() {}

    /** Writes them. */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        PdfOptions a4 = PdfOptions.standard();
        write(folder.resolve("demo.pdf"), InventedReviews.demoWeek(), a4);
        write(
                folder.resolve("demo-letter-comma.pdf"),
                InventedReviews.demoWeek(),
                new PdfOptions(PdfOptions.Paper.LETTER, PdfOptions.DecimalMark.COMMA, Optional.empty()));
        write(folder.resolve("empty.pdf"), InventedReviews.empty(), a4);
        write(folder.resolve("one.pdf"), InventedReviews.ofRuns(1), a4);
        write(folder.resolve("twelve.pdf"), InventedReviews.ofRuns(12), a4);
        write(folder.resolve("sixty.pdf"), InventedReviews.ofRuns(60), a4);
        write(folder.resolve("planned.pdf"), InventedReviews.planned(3), a4);
        write(folder.resolve("two-hundred.pdf"), InventedReviews.ofRuns(200), a4);
        write(folder.resolve("class-of-24.pdf"), CourseBook.ofTwentyFour(), a4);
        write(folder.resolve("signal.pdf"), CourseBook.withASignal(), a4);
        write(folder.resolve("long-names.pdf"), CourseBook.withLongNames(), a4);
        period(folder.resolve("period-none.pdf"), 0, "");
        period(folder.resolve("period-one.pdf"), 1, "week-");
        period(folder.resolve("period-sixty.pdf"), 60, "week-");
        period(
                folder.resolve("period-long-names.pdf"),
                8,
                "a-group-with-a-very-long-name-indeed/and a folder of its own/week ");
    }

    private static void period(Path file, int books, String prefix) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            PeriodReport.write(InventedPeriods.ofBooks(books, prefix), PdfOptions.standard(), out);
        }
    }

    private static void write(Path file, Review review, PdfOptions options) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            PdfReport.write(review, options, out);
        }
    }
}
