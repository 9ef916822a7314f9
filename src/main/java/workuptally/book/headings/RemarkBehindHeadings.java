package workuptally.book.headings;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.schema.SchemaColumn;

/**
 * Tells a remark that stands behind the last heading of a CSV file, under a blank one, from a line that a comma within a number has moved to
 * the right: where two cells side by side may be one number, the line is read both ways, and counts only where it fits as it stands and not
 * with the two joined.
 */
final class RemarkBehindHeadings {
    private static final Pattern NUMBER =
            Pattern.compile("[<>≤≥~]? ?[-+]?\\d[\\d.,]*(?: ?(?:%|\\p{L}{1,4}(?:/\\p{L}{1,2})?|± ?[\\d.,]+))?");

    private static final Pattern BARE_NUMBER = Pattern.compile("[-+]?\\d+(?:[.,]\\d+)?");

    private final List<SchemaColumn> form;
    private final Map<String, Integer> columns;

    /**
     * For a table.
     *
     * @param columns column number by heading
     */
    RemarkBehindHeadings(List<SchemaColumn> form, Map<String, Integer> columns) {
        this.form = form;
        this.columns = columns;
    }

    /** True where what stands behind the headings is a remark. */
    boolean isIn(RawRow row, RawRow headings) {
        if (row.width() == 0 || row.width() > headings.width()) {
            return false;
        }
        List<Integer> halves = row.halvesOfNumbers();
        return halves.isEmpty()
                || fits(row, halves.get(0), 0) && halves.stream().noneMatch(left -> fitsJoined(row, left));
    }

    /** True where the halves of a number make one entry of their column, and all behind it fit one to the left. */
    private boolean fitsJoined(RawRow row, int left) {
        String joined = text(row, left) + "." + text(row, left + 1);
        return fits(row, left, 1)
                && form.stream()
                        .filter(column -> columns.getOrDefault(column.heading(), -1) == left)
                        .allMatch(column -> fits(column, joined));
    }

    private static String text(RawRow row, int column) {
        return row.cell(column).map(RawCell::text).map(String::strip).orElse("");
    }

    /** True where every cell behind a column could stand under its heading, read so many cells further right. */
    private boolean fits(RawRow row, int behind, int shift) {
        return form.stream()
                .filter(column -> columns.getOrDefault(column.heading(), -1) > behind)
                .allMatch(column -> fits(column, text(row, columns.get(column.heading()) + shift)));
    }

    private static boolean fits(SchemaColumn column, String text) {
        return text.isEmpty()
                || switch (column.kind()) {
                    case NUMBER, NUMBER_WITH_UNIT -> NUMBER.matcher(text).matches();
                    case DATE, SETTING -> true;
                    case TEXT, CHOICE, LABELS, PARTS ->
                        !BARE_NUMBER.matcher(text).matches();
                };
    }
}
