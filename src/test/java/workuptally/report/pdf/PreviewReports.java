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
    }

    private static void write(Path file, Review review) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            PdfReport.write(review, PdfOptions.standard(), out);
        }
    }
}
