package workuptally.book.files;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The records of a CSV text. A record keeps its number, which is its row when shown as a sheet, and the line of the file it starts on. */
public final class CsvRows {
    /** Rows that a sheet has at most (ISO/IEC 29500 leaves it open; spreadsheet programs have 2^20). */
    static final int MOST_ROWS = 1_048_576;

    private static final String DELIMITERS = ",;\t|";

    /** How spreadsheet programs are made to keep a text that looks like a number. */
    private static final Pattern KEPT_AS_TEXT = Pattern.compile("=\"([^\"]*)\"");

    private CsvRows() {}

    /**
     * Splits a text into records; blank lines count as rows and are left out.
     *
     * @throws UnreadableBookException if quotes do not match, or there are more rows than a sheet has
     */
    public static List<RawRow> of(String file, String text) throws UnreadableBookException {
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
                List<RawCell> cells = isRemark(found) ? List.of() : cells(found);
                if (!cells.isEmpty()) {
                    rows.add(new RawRow((int) found.getRecordNumber(), (int) line, cells, found.size()));
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
            Matcher kept = KEPT_AS_TEXT.matcher(found.get(column).strip());
            RawCell cell = RawCell.text(column, kept.matches() ? kept.group(1) : found.get(column));
            if (!cell.isBlank()) {
                cells.add(cell);
            }
        }
        return cells;
    }

    /** A line that starts with # and a space, or a {@code sep=} line, says something about the file and holds no row. */
    private static boolean isRemark(CSVRecord found) {
        String first = found.get(0);
        return first.startsWith("# ")
                || found.getRecordNumber() == 1
                        && first.toLowerCase(Locale.ROOT).startsWith("sep=");
    }

    /**
     * Comma, semicolon, tab or bar, whichever the first lines together have most of outside quotes, so that neither a title nor a decimal
     * comma decides; a {@code sep=;} line does.
     */
    static char delimiter(String text) {
        char best = ',';
        int most = 0;
        List<String> first = text.lines().limit(20).toList();
        for (char candidate : DELIMITERS.toCharArray()) {
            int count = 0;
            for (String line : first) {
                if (line.toLowerCase(Locale.ROOT).startsWith("sep=") && line.length() == 5 && line.charAt(4) != '"') {
                    return line.charAt(4);
                }
                count += countOutsideQuotes(line, candidate);
            }
            if (count > most) {
                best = candidate;
                most = count;
            }
        }
        return best;
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
