package workuptally.book.lists;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.words.BookWords;

/**
 * A table of another kind that stands under a list on the same sheet: below a blank row, perhaps a title, headings of its own, then its
 * rows. Its rows would otherwise pass for runs.
 *
 * @param firstRow row of its headings; a title above is named as a row of its own
 * @param lastRow its last row: the last one of the sheet, or the one before the list's headings stand again
 * @param headings its headings in quotes
 */
record SecondTable(int firstRow, int lastRow, String headings) {
    private static final int MOST_NAMED = 4;

    /** The first one under a list, if there is one. */
    static Optional<SecondTable> below(RawTable raw, OwnListHeader header) {
        List<RawRow> rows = raw.rows().stream()
                .filter(row -> row.row() > header.lastRow().row())
                .toList();
        for (int i = 1; i + 1 < rows.size(); i++) {
            RawRow row = rows.get(i);
            boolean alone = row.row() > rows.get(i - 1).row() + 1;
            int headings = alone && row.cells().size() == 1 ? i + 1 : i;
            if (alone
                    && isFollowed(rows, i, headings + 1)
                    && isHeadings(rows.get(headings), rows.subList(0, i), header)) {
                return Optional.of(new SecondTable(
                        rows.get(headings).row(),
                        lastRow(rows.subList(headings + 1, rows.size()), header),
                        named(rows.get(headings))));
            }
        }
        return Optional.empty();
    }

    /** True where no blank row parts the rows from one index to another. */
    private static boolean isFollowed(List<RawRow> rows, int from, int to) {
        return to < rows.size() && rows.get(to).row() - rows.get(from).row() == to - from;
    }

    /** Words alone, one of them in a column whose cells above all hold a digit: an id, a day, a weight. */
    private static boolean isHeadings(RawRow row, List<RawRow> above, OwnListHeader header) {
        return row.cells().size() > 1
                && row.cells().stream().noneMatch(SecondTable::holdsDigit)
                && !header.isRepeatedBy(row)
                && row.cells().stream().anyMatch(cell -> isUnlike(cell, above));
    }

    private static boolean isUnlike(RawCell cell, List<RawRow> above) {
        List<RawCell> column = above.stream()
                .filter(row -> row.cells().size() > 1)
                .flatMap(row -> row.cell(cell.column()).stream())
                .toList();
        return !column.isEmpty() && column.stream().allMatch(SecondTable::holdsDigit);
    }

    private static boolean holdsDigit(RawCell cell) {
        return cell.type() != RawCell.Type.TEXT || cell.text().chars().anyMatch(Character::isDigit);
    }

    private static int lastRow(List<RawRow> below, OwnListHeader header) {
        int last = below.get(0).row();
        for (RawRow row : below) {
            if (header.isRepeatedBy(row)) {
                return last;
            }
            last = row.row();
        }
        return last;
    }

    private static String named(RawRow row) {
        return row.cells().stream()
                        .limit(MOST_NAMED)
                        .map(cell -> "'" + FindingLog.shortened(BookWords.tidy(cell.text()), 24) + "'")
                        .collect(Collectors.joining(", "))
                + (row.cells().size() > MOST_NAMED ? " and more" : "");
    }
}
