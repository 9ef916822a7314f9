package workuptally.report.workbook;

import java.util.List;
import java.util.stream.Stream;
import workuptally.report.view.Cell;
import workuptally.report.view.Column;
import workuptally.report.view.TableView;

/** Widths of the columns of a result sheet, and the heights of rows that follow from them. */
final class SheetLayout {
    private static final int WIDEST_CHARACTERS = 60;
    private static final int NARROWEST_CHARACTERS = 8;
    private static final int MARGIN_CHARACTERS = 1;
    private static final float POINTS_PER_LINE = 15;
    private static final float TALLEST_POINTS = 400;

    private final int[] widths;

    /** The layout of a sheet, by its headings and first rows. */
    SheetLayout(ResultSheet sheet) {
        List<Column> columns = sheet.view().columns();
        widths = new int[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            Column column = columns.get(i);
            int longest = headingWidth(column.heading());
            for (TableView.Row row : sheet.survey().firstRows()) {
                Cell cell = row.cells().get(i);
                int length = cell instanceof Cell.Number ? 0 : cell.shown().length() + 1;
                longest = Math.max(longest, Math.min(length, column.widthCharacters()));
            }
            widths[i] = Math.max(NARROWEST_CHARACTERS, Math.min(WIDEST_CHARACTERS, longest));
        }
    }

    /** Width of a column in characters. */
    int widthCharacters(int column) {
        return widths[column];
    }

    /** Height for the longest text of a row in points, since not every program finds it by itself; 0 for one line of the usual height. */
    float heightPoints(TableView.Row row) {
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            if (!(row.cells().get(i) instanceof Cell.Number)) {
                lines = Math.max(lines, lines(row.cells().get(i).shown(), Math.max(1, widths[i] - MARGIN_CHARACTERS)));
            }
        }
        return lines == 1 ? 0 : Math.min(TALLEST_POINTS, lines * POINTS_PER_LINE);
    }

    /** Lines of a text where a line has room for that many characters. */
    private static int lines(String text, int room) {
        if (text.length() <= room && text.indexOf('\n') < 0) {
            return 1;
        }
        return text.lines()
                .mapToInt(line -> Math.max(1, (line.length() + room - 1) / room))
                .sum();
    }

    /** Width of a heading that may wrap into two lines, beside its filter button. */
    private static int headingWidth(String heading) {
        int longestWord =
                Stream.of(heading.split(" ")).mapToInt(String::length).max().orElse(0);
        return Math.max(longestWord, heading.length() / 2 + 3) + 4;
    }
}
