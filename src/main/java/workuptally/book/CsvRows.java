package workuptally.book;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The records of a CSV text. A record keeps its number, which is its row when shown as a sheet, and the line of the file it starts on. */
final class CsvRows {
    /** Rows that a sheet has at most (ISO/IEC 29500 leaves it open; spreadsheet programs have 2^20). */
    static final int MOST_ROWS = 1_048_576;

    private static final String DELIMITERS = ",;\t";

    private CsvRows() {}

    /**
     * Splits a text into records; blank lines count as rows and are left out.
     *
     * @throws UnreadableBookException if quotes do not match, or there are more rows than a sheet has
     */
    static List<RawRow> of(String file, String text) throws UnreadableBookException {
        List<RawRow> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter(text))
                .setIgnoreEmptyLines(false)
                .get();
        long line = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                CSVRecord found = records.next();
                if (found.getRecordNumber() > MOST_ROWS) {
                    throw new UnreadableBookException(
                            file + " has more than " + MOST_ROWS + " rows: split it into several books.");
                }
                List<RawCell> cells = cells(found);
                if (!cells.isEmpty()) {
                    rows.add(new RawRow((int) found.getRecordNumber(), (int) line, cells));
                }
                line = parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException damaged) {
            throw new UnreadableBookException(
                    file + " has a quotation mark without its partner in the record that starts on line " + line
                            + ": close or remove it and run again.",
                    damaged);
        }
        return rows;
    }

    private static List<RawCell> cells(CSVRecord found) {
        List<RawCell> cells = new ArrayList<>(found.size());
        for (int column = 0; column < found.size(); column++) {
            RawCell cell = RawCell.text(column, found.get(column));
            if (!cell.isBlank()) {
                cells.add(cell);
            }
        }
        return cells;
    }

    /** Comma, semicolon or tab, whichever the first line with any of them has most of outside quotes; a {@code sep=;} line decides. */
    static char delimiter(String text) {
        for (String line : text.lines().limit(20).toList()) {
            if (line.toLowerCase(Locale.ROOT).startsWith("sep=") && line.length() == 5 && line.charAt(4) != '"') {
                return line.charAt(4);
            }
            char most = ',';
            int count = 0;
            for (char candidate : DELIMITERS.toCharArray()) {
                int own = countOutsideQuotes(line, candidate);
                if (own > count) {
                    most = candidate;
                    count = own;
                }
            }
            if (count > 0) {
                return most;
            }
        }
        return ',';
    }

    private static int countOutsideQuotes(String line, char wanted) {
        int count = 0;
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            if (line.charAt(i) == '"') {
                quoted = !quoted;
            } else if (line.charAt(i) == wanted && !quoted) {
                count++;
            }
        }
        return count;
    }
}
