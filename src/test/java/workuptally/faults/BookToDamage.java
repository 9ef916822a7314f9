package workuptally.faults;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import workuptally.book.files.ReadingOptions;
import workuptally.book.template.Template;

/** A few runs of the example week, small enough to be damaged and read thousands of times. */
final class BookToDamage {
    /** Runs of different kinds: an extraction, an ether without a tare, a repeated preparation. */
    static final List<String> RUNS = List.of("R26-042", "R26-047", "R26-051");

    private static final Path EXAMPLE = Path.of("input-templates", "demo-week");
    private static final Set<String> OF_RUNS = Set.of(
            "runs.csv",
            "products.csv",
            "charges.csv",
            "workup.csv",
            "layers.csv",
            "isolated.csv",
            "assays.csv",
            "nmr-assays.csv",
            "transfers.csv");

    private BookToDamage() {}

    /** Rows of cells, the headings first, by file name. */
    static Map<String, List<List<String>>> tables() {
        return tables(RUNS::contains);
    }

    /** One of these runs; where many books are reviewed, each takes the next one. */
    static Map<String, List<List<String>>> oneRun(int number) {
        return tables(RUNS.get(number % RUNS.size())::equals);
    }

    /** The whole example week. */
    static Map<String, List<List<String>>> week() {
        return tables(run -> true);
    }

    private static Map<String, List<List<String>>> tables(Predicate<String> wanted) {
        Map<String, List<List<String>>> tables = new TreeMap<>();
        try (Stream<Path> files = Files.list(EXAMPLE)) {
            for (Path file : files.sorted().toList()) {
                String name = file.getFileName().toString();
                List<List<String>> rows = new ArrayList<>();
                for (List<String> row : rows(Files.readString(file))) {
                    boolean own = rows.isEmpty()
                            || !OF_RUNS.contains(name)
                            || wanted.test(row.get(name.equals("transfers.csv") ? 1 : 0));
                    if (own) {
                        rows.add(row);
                    }
                }
                tables.put(name, rows);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return tables;
    }

    /** Files of a folder by name. */
    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    /** Rows that can be changed without changing those given. */
    static Map<String, List<List<String>>> copy(Map<String, List<List<String>>> tables) {
        Map<String, List<List<String>>> copy = new TreeMap<>();
        tables.forEach((name, rows) -> {
            List<List<String>> own = new ArrayList<>();
            rows.forEach(row -> own.add(new ArrayList<>(row)));
            copy.put(name, own);
        });
        return copy;
    }

    private static List<List<String>> rows(String text) throws IOException {
        try (CSVParser parser = CSVParser.parse(new StringReader(text), CSVFormat.RFC4180)) {
            return parser.stream()
                    .map(each -> (List<String>) new ArrayList<>(each.toList()))
                    .toList();
        }
    }

    /** A table as the text of its file. */
    static String csv(List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                String cell = row.get(i);
                boolean quoted = cell.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
                        || cell.startsWith("#")
                        || !cell.equals(cell.strip());
                text.append(i == 0 ? "" : ",").append(quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
            }
            text.append('\n');
        }
        return text.toString();
    }

    /** Writes the tables as a folder of CSV files. */
    static Path write(Map<String, List<List<String>>> tables, Path folder) throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, List<List<String>>> table : tables.entrySet()) {
            Files.write(folder.resolve(table.getKey()), csv(table.getValue()).getBytes(StandardCharsets.UTF_8));
        }
        return folder;
    }

    /** Writes the book as a workbook. */
    static Path workbook(Path scratch, Path file) throws Exception {
        return workbook(tables(), scratch, file);
    }

    /** Writes tables as a workbook. */
    static Path workbook(Map<String, List<List<String>>> tables, Path scratch, Path file) throws Exception {
        new Template().writeWorkbookFrom(write(tables, scratch), ReadingOptions.defaults(), file);
        return file;
    }
}
