package workuptally.reference.tables;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Text of one reference file: headings and rows by key, with the checks that hold for every table. */
public final class TableFile {
    static final int MOST_ROWS = 20_000;
    private static final int MOST_CELL_CHARACTERS = 2_000;

    private final KnownTable table;
    private final List<String> notes;
    private final List<String> columns;
    private final Map<String, ReferenceCells> rows;

    private TableFile(KnownTable table, List<String> notes, List<String> columns, Map<String, ReferenceCells> rows) {
        this.table = table;
        this.notes = notes;
        this.columns = columns;
        this.rows = rows;
    }

    static TableFile read(KnownTable table, String shownName, Reader reader) throws IllegalReferenceException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser parser =
                CSVParser.builder().setReader(reader).setFormat(format).get()) {
            List<String> columns = parser.getHeaderNames();
            checkColumns(table, shownName, columns);
            Map<String, Integer> positions = new HashMap<>();
            columns.forEach(column -> positions.put(column, positions.size()));
            Map<String, ReferenceCells> rows = new LinkedHashMap<>();
            for (CSVRecord each : parser) {
                long line = parser.getCurrentLineNumber();
                ReferenceCells row =
                        new ReferenceCells(shownName, line, positions, cells(shownName, columns, each, line));
                if (rows.size() == MOST_ROWS) {
                    throw new IllegalReferenceException(shownName, line, "more than " + MOST_ROWS + " rows");
                }
                String key = keyOf(table, row);
                if (rows.put(key, row) != null) {
                    throw new IllegalReferenceException(shownName, line, "the key '" + key + "' stands twice");
                }
            }
            List<String> notes = parser.hasHeaderComment()
                    ? parser.getHeaderComment().lines().map(String::strip).toList()
                    : List.of();
            return new TableFile(table, notes, columns, rows);
        } catch (IllegalReferenceException e) {
            throw e;
        } catch (IOException | IllegalStateException | IllegalArgumentException e) {
            // The CSV parser reports malformed quoting and doubled headings by either kind.
            throw new IllegalReferenceException(shownName, "is not a readable CSV file: " + e.getMessage());
        }
    }

    /** Makes an object of a row, and says what is wrong with one that it cannot be made of. */
    public interface RowReader<T> {
        T read(ReferenceCells row) throws IllegalReferenceException;
    }

    /** An object for each row, in order of the table. */
    public <T> List<T> each(RowReader<T> reader) throws IllegalReferenceException {
        List<T> read = new ArrayList<>();
        for (ReferenceCells row : rows()) {
            read.add(reader.read(row));
        }
        return List.copyOf(read);
    }

    private static void checkColumns(KnownTable table, String shownName, List<String> columns)
            throws IllegalReferenceException {
        for (String key : table.keyColumns()) {
            if (!columns.contains(key)) {
                throw new IllegalReferenceException(shownName, "has no column '" + key + "'");
            }
        }
    }

    private static List<String> cells(String shownName, List<String> columns, CSVRecord each, long line)
            throws IllegalReferenceException {
        if (!each.isConsistent()) {
            throw new IllegalReferenceException(
                    shownName, line, "has " + each.size() + " cells where " + columns.size() + " headings stand");
        }
        List<String> cells = new ArrayList<>(columns.size());
        for (int i = 0; i < columns.size(); i++) {
            String cell = each.get(i).strip();
            if (cell.isEmpty()) {
                throw new IllegalReferenceException(
                        shownName, line, columns.get(i) + " is blank; write - where nothing is known");
            }
            if (cell.length() > MOST_CELL_CHARACTERS) {
                throw new IllegalReferenceException(
                        shownName, line, columns.get(i) + " is longer than " + MOST_CELL_CHARACTERS + " characters");
            }
            cells.add(cell);
        }
        return cells;
    }

    private static String keyOf(KnownTable table, ReferenceCells row) {
        StringBuilder key = new StringBuilder();
        for (String column : table.keyColumns()) {
            key.append(key.isEmpty() ? "" : " | ").append(row.raw(column));
        }
        return key.toString();
    }

    /** This table with the rows of another put over it: same key replaces in place, new keys follow. */
    TableFile overriddenBy(TableFile other, String shownName) throws IllegalReferenceException {
        if (!Set.copyOf(columns).equals(Set.copyOf(other.columns))) {
            throw new IllegalReferenceException(
                    shownName, "the headings must be those of " + table.fileName() + ": " + String.join(",", columns));
        }
        Map<String, ReferenceCells> merged = new LinkedHashMap<>(rows);
        merged.putAll(other.rows);
        return new TableFile(table, notes, columns, merged);
    }

    /** The rows, in order of the table. */
    public List<ReferenceCells> rows() {
        return new ArrayList<>(rows.values());
    }

    /** The table as text, for showing. */
    public ReferenceTable asText() {
        List<List<String>> text = new ArrayList<>();
        for (ReferenceCells row : rows.values()) {
            text.add(columns.stream().map(row::raw).toList());
        }
        return new ReferenceTable(table.title(), notes, columns, text);
    }
}
