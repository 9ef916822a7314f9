package workuptally.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.ExampleReview;
import workuptally.report.view.wording.Wording;

/**
 * Times the annotated workbook against loading and saving the same book with the spreadsheet library. No test: run it by hand with a
 * folder as argument. Seconds belong to a machine, ratios travel.
 */
public final class WritingSpeed {
    private static final int CELLS_PER_RUN = 325;
    private static final int COLUMNS = 25;
    private static final int REPEATS = 5;

    private WritingSpeed() {}

    /** Runs the measurement. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (int runs : new int[] {20, 1000}) {
            Path input = book(folder.resolve("book-" + runs + ".xlsx"), runs);
            Path output = folder.resolve("out-" + runs + ".xlsx");
            Review review = review(runs);
            double carried = median(() -> AnnotatedWorkbook.write(input, output, review, Wording.POINT));
            double loaded = median(() -> loadAndSave(input, output));
            print(System.out, runs, carried, loaded);
        }
    }

    private static void print(PrintStream out, int runs, double carried, double loaded) {
        out.printf(
                Locale.ROOT,
                "%d runs: annotated %.3f s, load and save %.3f s, ratio %.2f%n",
                runs,
                carried,
                loaded,
                carried / loaded);
    }

    private static Path book(Path file, int runs) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            var sheet = workbook.createSheet("Runs");
            for (int r = 0; r < runs * CELLS_PER_RUN / COLUMNS; r++) {
                var row = sheet.createRow(r);
                for (int c = 0; c < COLUMNS; c++) {
                    if (c % 4 == 0) {
                        row.createCell(c).setCellValue("text " + r % 500 + " " + c);
                    } else {
                        row.createCell(c).setCellValue(r * 1.37 + c);
                    }
                }
            }
            workbook.write(out);
        }
        return file;
    }

    private static Review review(int runs) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 1; i <= runs; i++) {
            findings.add(
                    ExampleReview.finding(Severity.values()[i % 4], ExampleReview.id(i), "Runs", i * 10, i % COLUMNS));
        }
        return ExampleReview.of(runs, findings.toArray(Finding[]::new));
    }

    private static void loadAndSave(Path input, Path output) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(input));
                OutputStream out = Files.newOutputStream(output)) {
            workbook.write(out);
        }
    }

    private static double median(Work work) throws IOException {
        double[] seconds = new double[REPEATS];
        for (int i = 0; i < REPEATS; i++) {
            long start = System.nanoTime();
            work.run();
            seconds[i] = (System.nanoTime() - start) / 1e9;
        }
        Arrays.sort(seconds);
        return seconds[REPEATS / 2];
    }

    private interface Work {
        void run() throws IOException;
    }
}
