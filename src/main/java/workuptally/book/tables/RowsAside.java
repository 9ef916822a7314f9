package workuptally.book.tables;

import java.util.List;
import java.util.stream.Collectors;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawTable;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.model.Severity;

/** Says of a sheet which of its rows a reader does not see as the others: hidden ones, which count, and struck-out ones, which do not. */
public final class RowsAside {
    private static final int MOST_NAMED = 12;

    private RowsAside() {}

    /**
     * Reports them, once a sheet.
     *
     * @param headingRow row of the headings; what is struck out above it is no row of the table
     */
    public static void report(RawTable raw, int headingRow, FindingLog log) {
        Place sheet = new Place(raw.file(), raw.sheet(), 0, -1, "");
        if (raw.hiddenRows() > 0) {
            log.add(
                    FindingCode.ROWS_HIDDEN,
                    Severity.NOTE,
                    "",
                    sheet,
                    raw.hiddenRows() + (raw.hiddenRows() == 1 ? " hidden row" : " hidden rows"),
                    "nothing; hidden rows count like others",
                    "Look at them if you did not expect any.");
        }
        List<Integer> struck =
                raw.struckRows().stream().filter(row -> row > headingRow).toList();
        if (!struck.isEmpty()) {
            log.add(
                    FindingCode.ROWS_STRUCK,
                    Severity.NOTE,
                    "",
                    sheet,
                    (struck.size() == 1 ? "row " : "rows ") + named(struck) + ", struck out",
                    "nothing; rows struck out as a whole are left out",
                    "Take the strike off a row that counts and run again.");
        }
    }

    private static String named(List<Integer> rows) {
        String first = rows.stream().limit(MOST_NAMED).map(String::valueOf).collect(Collectors.joining(", "));
        return rows.size() > MOST_NAMED ? first + " and " + (rows.size() - MOST_NAMED) + " more" : first;
    }
}
