package workuptally.property;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import workuptally.book.BookReader;
import workuptally.model.Book;

/** The tables of a book as text, to be changed cell by cell before they are read. */
final class CsvTables {
    private static final Path DEMO = Path.of("input-templates", "demo-week");

    /** Rows by file name, headings first. */
    private final Map<String, List<List<String>>> tables = new TreeMap<>();

    static CsvTables ofTheDemoWeek() {
        CsvTables book = new CsvTables();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(DEMO, "*.csv")) {
            for (Path file : files) {
                book.tables.put(file.getFileName().toString(), rows(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return book;
    }

    /** Tables with headings and no rows. */
    static CsvTables of(Map<String, List<String>> headings) {
        CsvTables book = new CsvTables();
        headings.forEach((table, words) -> {
            List<List<String>> rows = new ArrayList<>();
            rows.add(new ArrayList<>(words));
            book.tables.put(table, rows);
        });
        return book;
    }

    private static List<List<String>> rows(Path file) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, CSVFormat.DEFAULT)) {
            for (CSVRecord row : parser) {
                rows.add(new ArrayList<>(row.toList()));
            }
        }
        return rows;
    }

    /** One row of a table. */
    record Row(List<String> headings, List<String> cells) {
        String get(String heading) {
            return cells.get(headings.indexOf(heading));
        }

        void set(String heading, String text) {
            cells.set(headings.indexOf(heading), text);
        }

        boolean is(String heading, String text) {
            return get(heading).equals(text);
        }
    }

    /** File names of the tables. */
    List<String> names() {
        return List.copyOf(tables.keySet());
    }

    /** Headings of a table. */
    List<String> headings(String table) {
        return tables.get(table).get(0);
    }

    /** Tables of the same headings without rows, but for those named. */
    CsvTables emptied(List<String> kept) {
        CsvTables book = new CsvTables();
        tables.forEach((table, all) ->
                book.tables.put(table, new ArrayList<>(kept.contains(table) ? all : all.subList(0, 1))));
        return book;
    }

    List<Row> rows(String table) {
        List<List<String>> all = tables.get(table);
        return all.subList(1, all.size()).stream()
                .map(cells -> new Row(all.get(0), cells))
                .toList();
    }

    void add(String table, List<String> cells) {
        tables.get(table).add(new ArrayList<>(cells));
    }

    void remove(String table, Predicate<Row> which) {
        List<List<String>> all = tables.get(table);
        List<List<String>> gone =
                rows(table).stream().filter(which).map(Row::cells).toList();
        all.removeIf(cells -> gone.stream().anyMatch(g -> g == cells));
    }

    /** Changes the cells of a column that are not blank. */
    void change(String table, String heading, UnaryOperator<String> change) {
        for (Row row : rows(table)) {
            if (!row.get(heading).isBlank()) {
                row.set(heading, change.apply(row.get(heading)));
            }
        }
    }

    void rename(String table, String heading, String to) {
        Collections.replaceAll(tables.get(table).get(0), heading, to);
    }

    void shuffleRows(Random random) {
        tables.values().forEach(rows -> Collections.shuffle(rows.subList(1, rows.size()), random));
    }

    /** Writes the tables into an empty folder and reads them as a user's book. */
    Book read(Path folder) {
        try {
            Path book = Files.createTempDirectory(folder, "book");
            for (Map.Entry<String, List<List<String>>> table : tables.entrySet()) {
                StringWriter text = new StringWriter();
                try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.DEFAULT)) {
                    printer.printRecords(table.getValue());
                }
                Files.writeString(book.resolve(table.getKey()), text.toString());
            }
            return new BookReader().read(book);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (workuptally.book.files.UnreadableBookException e) {
            throw new IllegalStateException(e);
        }
    }
}
