package workuptally.speed;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.template.Template;

/**
 * Books of any size, made from the invented demo week: its runs again and again under new ids. Gross masses differ by a tenth of a
 * milligram from copy to copy, since no two weighings of a laboratory are equal to the last digit.
 */
public final class ReplicatedWeek {
    private static final String RUN_PREFIX = "R26-";
    private static final Set<String> OF_RUNS = Set.of("Run", "Transfer", "Record");
    private static final Set<String> SHARED_TABLES = Set.of("vessels.csv", "limits.csv");
    private static final BigDecimal GROSS_STEP = new BigDecimal("0.0001");

    private final Path demoWeek;
    private final int runs;

    /**
     * A book.
     *
     * @param demoWeek folder of CSV files
     * @param runs number of runs, 1 or more
     */
    public ReplicatedWeek(Path demoWeek, int runs) {
        this.demoWeek = demoWeek;
        this.runs = runs;
    }

    /** Arguments: folder of CSV files, number of runs, the workbook to write. */
    public static void main(String[] args) throws IOException, UnreadableBookException {
        new ReplicatedWeek(Path.of(args[0]), Integer.parseInt(args[1])).writeWorkbook(Path.of(args[2]));
    }

    /** Writes the book as a workbook; the CSV files go to a folder beside it. */
    public void writeWorkbook(Path target) throws IOException, UnreadableBookException {
        Path folder = target.resolveSibling(target.getFileName() + "-csv");
        writeCsv(folder);
        new Template().writeWorkbookFrom(folder, ReadingOptions.defaults(), target);
    }

    /** Writes the book as a folder of CSV files. */
    public void writeCsv(Path folder) throws IOException {
        Files.createDirectories(folder);
        try (Stream<Path> tables = Files.list(demoWeek)) {
            for (Path table : tables.sorted().toList()) {
                replicate(table, folder.resolve(table.getFileName()));
            }
        }
    }

    private void replicate(Path table, Path target) throws IOException {
        List<CSVRecord> rows = records(table);
        List<String> headings = rows.get(0).toList();
        boolean shared = SHARED_TABLES.contains(table.getFileName().toString());
        try (Writer out = Files.newBufferedWriter(target, StandardCharsets.UTF_8);
                CSVPrinter printer = new CSVPrinter(out, CSVFormat.DEFAULT)) {
            printer.printRecord(headings);
            List<String> weekRuns = weekRuns();
            for (int copy = 0; copy * weekRuns.size() < runs && (copy == 0 || !shared); copy++) {
                int left = runs - copy * weekRuns.size();
                Set<String> dropped = new HashSet<>(weekRuns.subList(Math.min(left, weekRuns.size()), weekRuns.size()));
                for (CSVRecord row : rows.subList(1, rows.size())) {
                    if (!isOf(row, headings, dropped)) {
                        printer.printRecord(copied(row, headings, copy));
                    }
                }
            }
        }
    }

    private List<String> weekRuns() throws IOException {
        return records(demoWeek.resolve("runs.csv")).stream()
                .skip(1)
                .map(row -> row.get(0))
                .toList();
    }

    private static boolean isOf(CSVRecord row, List<String> headings, Set<String> dropped) {
        int run = headings.indexOf("Run");
        return run >= 0 && dropped.contains(row.get(run));
    }

    private static List<String> copied(CSVRecord row, List<String> headings, int copy) {
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < headings.size(); column++) {
            String heading = headings.get(column);
            String cell = row.get(column);
            cells.add(copy == 0 || cell.isEmpty() ? cell : copied(cell, heading, copy));
        }
        return cells;
    }

    private static String copied(String cell, String heading, int copy) {
        if (heading.equals("Gross (g)")) {
            return new BigDecimal(cell)
                    .add(GROSS_STEP.multiply(BigDecimal.valueOf(copy)))
                    .toPlainString();
        }
        String number = String.format(Locale.ROOT, "%04d", copy);
        if (heading.equals("Container") || heading.equals("Series")) {
            return cell + "-" + number;
        }
        return OF_RUNS.contains(heading)
                ? cell.replace(RUN_PREFIX, "R" + number + "-").replaceFirst("^T(?=\\d)", "T" + number + "-")
                : cell;
    }

    private static List<CSVRecord> records(Path table) throws IOException {
        try (Reader in = Files.newBufferedReader(table, StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT.parse(in).getRecords();
        }
    }
}
