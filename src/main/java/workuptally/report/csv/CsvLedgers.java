package workuptally.report.csv;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import workuptally.judgement.Review;
import workuptally.judgement.period.PeriodReview;
import workuptally.report.view.ledgers.Ledgers;
import workuptally.report.view.ledgers.PeriodLedgerViews;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;

/**
 * Writes ledgers as CSV: UTF-8, line feeds, units in the headings, a decimal point, numbers unrounded, empty where nothing is known.
 *
 * <p>A text that a spreadsheet program would take for a formula gets an apostrophe in front; full-width signs start one too where Chinese
 * or Japanese is written.
 */
public final class CsvLedgers {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    private static final String FORMULA_STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private CsvLedgers() {}

    /**
     * Writes the ledgers of a review.
     *
     * @param files a file for each of {@link Ledgers#NAMES}, in that order; an existing one is replaced
     * @param review the review
     * @throws IOException if a file cannot be written
     */
    public static void write(List<Path> files, Review review) throws IOException {
        Map<String, TableView> ledgers = Ledgers.of(review);
        for (int i = 0; i < files.size(); i++) {
            write(files.get(i), ledgers.get(Ledgers.NAMES.get(i)));
        }
    }

    /**
     * Writes the solvent ledger of a period, one line per run and solvent.
     *
     * @param file file to write; an existing one is replaced
     * @param review the period
     * @throws IOException if the file cannot be written
     */
    public static void writeSolvents(Path file, PeriodReview review) throws IOException {
        write(file, PeriodLedgerViews.solvents(review));
    }

    /**
     * Writes the waste ledger of a period, one line per run and layer.
     *
     * @param file file to write; an existing one is replaced
     * @param review the period
     * @throws IOException if the file cannot be written
     */
    public static void writeWaste(Path file, PeriodReview review) throws IOException {
        write(file, PeriodLedgerViews.waste(review));
    }

    private static void write(Path file, TableView table) throws IOException {
        try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
                CSVPrinter printer = FORMAT.print(writer)) {
            printer.printRecord(table.columns().stream().map(Column::heading).toList());
            for (TableView.Row row : (Iterable<TableView.Row>) table.stream()::iterator) {
                List<String> fields =
                        row.cells().stream().map(CsvLedgers::field).toList();
                printer.printRecord(fields);
            }
        }
    }

    private static String field(Cell cell) {
        if (cell instanceof Cell.Number number) {
            return rounded(number.value()).toPlainString();
        }
        String text = cell.shown();
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    /** Four decimals, or six significant digits below 1; what remains of a sum below a nanounit is no figure. */
    private static BigDecimal rounded(double value) {
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal shorter = Math.abs(value) < 1
                ? exact.round(new MathContext(6)).setScale(9, RoundingMode.HALF_EVEN)
                : exact.setScale(4, RoundingMode.HALF_EVEN);
        return shorter.signum() == 0 ? BigDecimal.ZERO : shorter.stripTrailingZeros();
    }
}
