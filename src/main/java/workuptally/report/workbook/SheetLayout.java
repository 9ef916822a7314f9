package workuptally.report.workbook;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;

/** Widths of the columns of a result sheet, and the heights of rows that follow from them. */
final class SheetLayout {
    private static final int WIDEST_CHARACTERS = 60;

    /** As wide as a column of long texts becomes so that no row needs more lines than {@link #MOST_LINES}. */
    private static final int WIDEST_OF_LONG_TEXTS = 110;

    private static final int MOST_LINES = 3;
    private static final int WIDENED_BY = 4;
    private static final int NARROWEST_CHARACTERS = 8;
    private static final int MARGIN_CHARACTERS = 1;

    private static final int BETWEEN_NUMBERS_CHARACTERS = 2;

    /** Room for the filter button of a heading. */
    private static final int BUTTON_CHARACTERS = 3;

    /** A wide table is printed smaller; above this sum of widths, about two thirds of the size, its texts wrap instead. */
    private static final int MOST_CHARACTERS = 220;

    private static final int NARROWED_CHARACTERS = 26;
    private static final double NARROWED_FRACTION = 0.6;

    /** Characters and lines of a landscape page in full size. */
    private static final double PAGE_CHARACTERS = 149;

    private static final double PAGE_LINES = 35;

    /** Letters of a text are narrower on average than the digits by which widths are counted. */
    private static final double TEXT_PER_DIGIT = 1.1;

    private static final float POINTS_PER_LINE = 15;

    /** Where a heading may break: at a space, behind a hyphen. */
    private static final Pattern BREAKS = Pattern.compile(" |(?<=-)");

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
            widths[i] = Math.max(NARROWEST_CHARACTERS, Math.min(WIDEST_CHARACTERS, longest))
                    + (column.isNumber() ? BETWEEN_NUMBERS_CHARACTERS : 0);
        }
        narrow(columns);
        widenForLongTexts(sheet);
    }

    private void widenForLongTexts(ResultSheet sheet) {
        for (TableView.Row row : sheet.survey().firstRows()) {
            for (int i = 0; i < widths.length; i++) {
                if (!(row.cells().get(i) instanceof Cell.Number)) {
                    String text = row.cells().get(i).shown();
                    while (widths[i] < WIDEST_OF_LONG_TEXTS && lines(text, room(i)) > MOST_LINES) {
                        widths[i] += WIDENED_BY;
                    }
                }
            }
        }
    }

    /** Takes from wide columns of texts what the page has no room for. */
    private void narrow(List<Column> columns) {
        int excess = sum() - MOST_CHARACTERS;
        int spare = 0;
        for (int i = 0; i < widths.length; i++) {
            spare += spare(columns.get(i), widths[i]);
        }
        if (excess > 0 && spare > 0) {
            double share = Math.min(1, (double) excess / spare);
            for (int i = 0; i < widths.length; i++) {
                widths[i] -= (int) (share * spare(columns.get(i), widths[i]));
            }
        }
    }

    private static int spare(Column column, int width) {
        int least = Math.max(NARROWED_CHARACTERS, Math.max(headingWidth(column.heading()), (int)
                (NARROWED_FRACTION * column.widthCharacters())));
        return column.isNumber() ? 0 : Math.max(0, width - least);
    }

    private int sum() {
        return IntStream.of(widths).sum();
    }

    /** True where a chart of that many lines fits on the first page below the rows. */
    boolean hasRoomBelow(ResultSheet sheet, int chartLines) {
        double lines = sheet.firstRow() + ResultCharts.ROWS_BELOW_TABLE + chartLines;
        for (TableView.Row row : sheet.survey().firstRows()) {
            lines += Math.max(1, heightPoints(row) / POINTS_PER_LINE);
        }
        return lines <= PAGE_LINES * Math.max(1, sum() / PAGE_CHARACTERS);
    }

    /** Height of the headings in points: some programs show the first row beneath a heading whose height they find only later. */
    float headingPoints(List<Column> columns) {
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            lines = Math.max(lines, wordLines(columns.get(i).heading(), widths[i] - BUTTON_CHARACTERS));
        }
        return lines * POINTS_PER_LINE;
    }

    /** Lines where a text breaks between words. */
    private static int wordLines(String text, int room) {
        int lines = 1;
        int used = 0;
        for (String word : BREAKS.split(text)) {
            if (used > 0 && used + word.length() > room) {
                lines++;
                used = 0;
            }
            used += word.length() + 1;
        }
        return lines;
    }

    /** Width of a column in characters. */
    int widthCharacters(int column) {
        return widths[column];
    }

    /**
     * Height for the longest text of a row in points, since not every program finds it by itself; 0 for one line of the usual height. What
     * is longer than three lines of the widest column is read in the cell.
     */
    float heightPoints(TableView.Row row) {
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            if (!(row.cells().get(i) instanceof Cell.Number)) {
                lines = Math.max(lines, lines(row.cells().get(i).shown(), room(i)));
            }
        }
        return lines == 1 ? 0 : Math.min(MOST_LINES, lines) * POINTS_PER_LINE;
    }

    private int room(int column) {
        return Math.max(1, (int) ((widths[column] - MARGIN_CHARACTERS) * TEXT_PER_DIGIT));
    }

    /** Lines of a text where a line has room for that many characters. */
    private static int lines(String text, int room) {
        if (text.length() <= room && text.indexOf('\n') < 0) {
            return 1;
        }
        return text.lines()
                .mapToInt(line -> Math.max(wordLines(line, room), (line.length() + room - 1) / room))
                .sum();
    }

    /** Width of a heading that may wrap into two lines, beside its filter button. */
    private static int headingWidth(String heading) {
        int longestWord =
                BREAKS.splitAsStream(heading).mapToInt(String::length).max().orElse(0);
        return Math.max(longestWord, heading.length() / 2 + 3) + 4;
    }
}
