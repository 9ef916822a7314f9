package workuptally.book;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * One way in which people fill a cell, with its right reading; a row of {@code bench-entries.csv}.
 *
 * @param line record of the file, for messages
 * @param sheet table
 * @param heading heading with its unit
 * @param stored what the cell stores: text, number, date, boolean or error
 * @param format its number format
 * @param typed the text or number
 * @param writes language in which the other numbers of the book are written; empty for decimal points
 * @param kind kind of the right reading
 * @param value its value
 * @param severity the most that a finding may have, or that of a refusal
 * @param row row of the table in which it stands, from 0; empty for the usual one, {@code new} for a row of its own
 * @param others other cells of that row
 */
record BenchEntry(
        long line,
        String sheet,
        String heading,
        String stored,
        String format,
        String typed,
        String writes,
        String kind,
        String value,
        String severity,
        String row,
        Map<String, String> others) {
    private static final Path FILE = Path.of("src/test/resources/workuptally/book/bench-entries.csv");

    /** All rows of the file. */
    static List<BenchEntry> all() throws IOException {
        try (Reader reader = Files.newBufferedReader(FILE)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .setCommentMarker('#')
                    .get()
                    .parse(reader)
                    .stream()
                    .map(BenchEntry::of)
                    .toList();
        }
    }

    private static BenchEntry of(CSVRecord row) {
        return new BenchEntry(
                row.getRecordNumber(),
                row.get("sheet"),
                row.get("heading"),
                row.get("stored"),
                row.get("format"),
                row.get("typed"),
                row.get("writes"),
                row.get("kind"),
                row.get("value"),
                row.get("severity"),
                row.get("row"),
                cells(row.get("others")));
    }

    /** Cells written as {@code heading=cell; heading=cell}. */
    static Map<String, String> cells(String text) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (String part : text.split(";")) {
            int equals = part.indexOf('=');
            if (equals > 0) {
                cells.put(
                        part.substring(0, equals).strip(),
                        part.substring(equals + 1).strip());
            }
        }
        return cells;
    }

    boolean hasNewRow() {
        return row.equals("new");
    }

    String said() {
        return "record " + line + ": " + sheet + " / " + heading + " '" + typed + "'"
                + (format.isEmpty() ? "" : " [" + format + "]") + (writes.isEmpty() ? "" : " (" + writes + ")");
    }
}
