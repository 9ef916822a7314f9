package workuptally.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import workuptally.judgement.Review;

/** Writes the invented reviews as files to look at: {@code java … PreviewReports FOLDER}. */
final class PreviewReports {
    private PreviewReports() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        write(folder.resolve("empty.pdf"), InventedReviews.empty());
        write(folder.resolve("one.pdf"), InventedReviews.ofRuns(1));
        write(folder.resolve("twelve.pdf"), InventedReviews.ofRuns(12));
        write(folder.resolve("sixty.pdf"), InventedReviews.ofRuns(60));
        write(folder.resolve("demo.pdf"), InventedReviews.demoWeek());
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

    private static void write(Path file, Review review) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            PdfReport.write(review, PdfOptions.standard(), out);
        }
    }
}
