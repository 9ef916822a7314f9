package workuptally.report.pdf.layout;

import java.util.ArrayList;
import java.util.List;

/** Widths of the columns of a table and the lines of its cells. */
final class TableLayout {
    /** White beside the text of a cell, points. */
    static final float PAD = 3;
    /** White above and below the lines of a row, points. */
    static final float PAD_VERTICAL = 1.1f;
    /** Room for the symbol of a severity, points. */
    static final float MARK_WIDTH = 10;

    /** Most lines of a cell that is only to remind. */
    static final int BRIEF_LINES = 2;

    private static final float WORD_CAP = 84;
    private static final float CHART_WIDTH = 112;
    private static final float BOX_WIDTH = 46;
    private static final float BOX_WIDTH_LEAST = 28;
    /** Height of a box to write in, points: 6.4 mm, the lines of narrow ruled paper. */
    private static final float BOX_HEIGHT = 18;

    private final Look look;
    private final List<TableColumn> columns;
    private final List<Row> rows = new ArrayList<>();
    private final List<List<String>> head = new ArrayList<>();
    private final float[] widths;
    private final float[] numberLeft;
    private final float[] numberRight;
    private final int headLines;

    /**
     * Lays a table out.
     *
     * @throws IllegalArgumentException if a row has another number of cells than there are columns
     */
    TableLayout(Look look, List<TableColumn> columns, List<List<TableCell>> cells) {
        this.look = look;
        this.columns = List.copyOf(columns);
        this.numberLeft = new float[columns.size()];
        this.numberRight = new float[columns.size()];
        for (List<TableCell> row : cells) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(row.size() + " cells for " + columns.size() + " columns");
            }
        }
        List<MeasuredText> headings =
                columns.stream().map(c -> measured(c.heading(), headStyle())).toList();
        List<List<MeasuredText>> texts = cells.stream()
                .map(row -> row.stream()
                        .map(cell -> measured(cell.text(), style(cell)))
                        .toList())
                .toList();
        this.widths = widths(headings, cells, texts);
        for (int i = 0; i < columns.size(); i++) {
            head.add(headings.get(i).wrap(widths[i] - 2 * PAD + 0.05f));
        }
        this.headLines = head.stream().mapToInt(List::size).max().orElse(1);
        for (int row = 0; row < cells.size(); row++) {
            rows.add(lay(cells.get(row), texts.get(row)));
        }
    }

    List<Row> rows() {
        return rows;
    }

    float width(int column) {
        return widths[column];
    }

    /** Distance of a column from the left edge of the table. */
    float left(int column) {
        float x = 0;
        for (int i = 0; i < column; i++) {
            x += widths[i];
        }
        return x;
    }

    float width() {
        return left(widths.length);
    }

    int headLines() {
        return headLines;
    }

    List<String> headLines(int column) {
        return head.get(column);
    }

    /** Where a number begins in its cell, so that decimal marks stand one under the other. */
    float numberIndent(int column, String text, TextStyle style) {
        float before = look.typeface().width(text.substring(0, decimalPlace(text)), style);
        return widths[column] - 2 * PAD - numberRight[column] - before;
    }

    TextStyle style(TableCell cell) {
        return cell.bold() ? look.table().inBold() : look.table();
    }

    TextStyle headStyle() {
        return look.table().inBold().in(look.palette().soft());
    }

    private MeasuredText measured(String text, TextStyle style) {
        return new MeasuredText(look.typeface(), text, style);
    }

    private float[] widths(List<MeasuredText> headings, List<List<TableCell>> cells, List<List<MeasuredText>> texts) {
        float[] least = new float[columns.size()];
        float[] natural = new float[columns.size()];
        List<Boolean> stretches = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            TableColumn column = columns.get(i);
            natural[i] =
                    column.scale().isPresent() ? CHART_WIDTH : headings.get(i).widest();
            least[i] = isText(column) ? headings.get(i).widestWord(WORD_CAP) : natural[i];
            if (column.kind() == TableColumn.Kind.BOX) {
                least[i] = Math.max(least[i], BOX_WIDTH_LEAST);
                natural[i] = Math.max(natural[i], BOX_WIDTH);
            }
            for (int row = 0; row < cells.size(); row++) {
                widen(i, cells.get(row).get(i), texts.get(row).get(i), least, natural);
            }
            if (column.kind() == TableColumn.Kind.NUMBER) {
                natural[i] = Math.max(natural[i], numberLeft[i] + numberRight[i]);
                least[i] = natural[i];
            }
            least[i] += 2 * PAD;
            natural[i] += 2 * PAD;
            least[i] = Math.min(least[i], natural[i]);
            stretches.add(isText(column));
        }
        float[] shared = ColumnWidths.share(least, natural, stretches, look.widthPoints());
        fit(shared, least, texts);
        return shared;
    }

    /** Balances the text columns, unless each row fits a line already. */
    private void fit(float[] shared, float[] least, List<List<MeasuredText>> texts) {
        List<Integer> open = new ArrayList<>();
        List<List<MeasuredText>> openTexts = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (isText(columns.get(i))) {
                int column = i;
                open.add(i);
                openTexts.add(texts.stream().map(row -> row.get(column)).toList());
            }
        }
        if (!texts.isEmpty()) {
            boolean brief = columns.stream().anyMatch(c -> c.kind() == TableColumn.Kind.BRIEF);
            new ColumnFit(shared, least, open, openTexts, 2 * PAD, brief).improve();
        }
    }

    private static boolean isText(TableColumn column) {
        return column.kind() == TableColumn.Kind.TEXT || column.kind() == TableColumn.Kind.BRIEF;
    }

    private void widen(int i, TableCell cell, MeasuredText measured, float[] least, float[] natural) {
        if (columns.get(i).kind() == TableColumn.Kind.NUMBER) {
            String text = look.typeface().line(cell.text());
            int split = decimalPlace(text);
            numberLeft[i] = Math.max(numberLeft[i], look.typeface().width(text.substring(0, split), style(cell)));
            numberRight[i] = Math.max(numberRight[i], look.typeface().width(text.substring(split), style(cell)));
            return;
        }
        float mark = cell.mark().isPresent() ? MARK_WIDTH : 0;
        float whole = mark + measured.widest();
        natural[i] = Math.max(natural[i], whole);
        boolean kept = columns.get(i).kind() == TableColumn.Kind.WORD && whole <= WORD_CAP;
        least[i] = Math.max(least[i], kept ? whole : mark + measured.widestWord(WORD_CAP));
    }

    /** Where the decimal mark is, or would be behind the last digit of the first number. */
    private int decimalPlace(String text) {
        int mark = text.indexOf(look.figures().mark());
        if (mark >= 0) {
            return mark;
        }
        int last = text.length();
        for (int i = 0; i < text.length(); i++) {
            if (Character.isDigit(text.charAt(i))
                    && (i + 1 == text.length() || !Character.isDigit(text.charAt(i + 1)))) {
                return i + 1;
            }
        }
        return last;
    }

    private Row lay(List<TableCell> cells, List<MeasuredText> texts) {
        List<List<String>> lines = new ArrayList<>();
        int most = 1;
        for (int i = 0; i < cells.size(); i++) {
            TableCell cell = cells.get(i);
            float mark = cell.mark().isPresent() ? MARK_WIDTH : 0;
            float width = widths[i] - 2 * PAD - mark + 0.05f;
            List<String> own = columns.get(i).kind() == TableColumn.Kind.BRIEF
                    ? texts.get(i).brief(width, BRIEF_LINES)
                    : texts.get(i).wrap(width);
            lines.add(own);
            most = Math.max(most, own.size());
        }
        return new Row(List.copyOf(cells), lines, most);
    }

    float leading() {
        return look.table().leading();
    }

    float height(Row row) {
        return row.lineCount() * leading() + 2 * padVertical(row);
    }

    /** White above and below the lines of a row, points: more where there is a box to write in. */
    float padVertical(Row row) {
        boolean boxes = columns.stream().anyMatch(c -> c.kind() == TableColumn.Kind.BOX);
        return Math.max(PAD_VERTICAL, boxes ? (BOX_HEIGHT - row.lineCount() * leading()) / 2 : 0);
    }

    float headHeight() {
        return headLines * headStyle().leading() + 2 * PAD_VERTICAL;
    }

    /**
     * A row with its lines laid.
     *
     * @param cells cells
     * @param lines lines per cell
     * @param lineCount most lines of a cell
     */
    record Row(List<TableCell> cells, List<List<String>> lines, int lineCount) {}
}
