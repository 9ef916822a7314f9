package workuptally.report.pdf;

import java.util.List;
import java.util.OptionalDouble;
import java.util.StringJoiner;

/** Found against planned yields: a dot with whiskers of U and a short upright bar, a row per product. */
final class YieldChart implements Picture {
    private static final float ROW = 13;
    private static final float AXIS = 24;
    private static final float HEAD = 13;
    private static final float LABEL = 178;
    private static final float VALUE = 108;

    private final Look look;
    private final List<Row> rows;
    private final double axisEnd;
    private final double coverageFactor;

    /**
     * A chart.
     *
     * @param rows rows in order
     * @param axisEndPercent end of the axis, %
     * @param coverageFactor k of the whiskers
     */
    YieldChart(Look look, List<Row> rows, double axisEndPercent, double coverageFactor) {
        this.look = look;
        this.rows = List.copyOf(rows);
        this.axisEnd = axisEndPercent;
        this.coverageFactor = coverageFactor;
    }

    /** End of an axis that holds all rows: 100 %, or the next 20 % above the largest. */
    static double axisEndPercent(List<Row> rows) {
        double largest = 100;
        for (Row row : rows) {
            largest = Math.max(largest, row.plannedPercent().orElse(0));
            largest = Math.max(largest, row.foundPercent().orElse(0) + row.expandedUncertaintyPercent());
        }
        return Math.min(200, Math.ceil(largest / 20) * 20);
    }

    private List<String> label(Row row) {
        return look.typeface().wrap(row.label(), look.table(), LABEL - 8);
    }

    private float height(Row row) {
        return Math.max(ROW, label(row).size() * look.table().leading() + 3);
    }

    @Override
    public float height() {
        float height = HEAD + AXIS;
        for (Row row : rows) {
            height += height(row);
        }
        return height;
    }

    @Override
    public String alternative() {
        StringJoiner text = new StringJoiner("; ", "Chart of yields in percent of theory. ", ".");
        for (Row row : rows) {
            String planned = row.plannedPercent().isPresent()
                    ? ", planned "
                            + look.figures().significant(row.plannedPercent().getAsDouble(), 3) + " %"
                    : "";
            text.add(row.label() + ": " + row.valueText() + planned);
        }
        return text.toString();
    }

    @Override
    public void draw(PageFlow flow, float left, float top) {
        Pen pen = new Pen(flow.canvas());
        TextStyle small = look.caption();
        legend(flow, pen, left + LABEL, top - 8);
        float axisLeft = left + LABEL;
        float axisWidth = look.widthPoints() - LABEL - VALUE;
        float rowsTop = top - HEAD;
        float bottom = top - height() + AXIS;
        for (int percent = 0; percent <= axisEnd; percent += 20) {
            float x = (float) (axisLeft + axisWidth * percent / axisEnd);
            pen.line(
                    x,
                    rowsTop,
                    x,
                    bottom - 2,
                    percent == 100 ? 0.7f : 0.3f,
                    look.palette().rule());
            String mark = Integer.toString(percent);
            flow.text(mark, x - look.typeface().width(mark, small) / 2, bottom - 10, small);
        }
        String axis = "yield, % of theory; whiskers: ± U (k = " + look.figures().significant(coverageFactor, 2) + ")";
        flow.text(axis, axisLeft + (axisWidth - look.typeface().width(axis, small)) / 2, bottom - 20, small);
        float y = rowsTop;
        for (Row row : rows) {
            float height = height(row);
            drawRow(flow, pen, row, left, y, height, axisLeft, axisWidth);
            y -= height;
        }
        pen.line(
                axisLeft,
                bottom - 2,
                axisLeft + axisWidth,
                bottom - 2,
                0.6f,
                look.palette().strongRule());
    }

    private void legend(PageFlow flow, Pen pen, float x, float y) {
        TextStyle small = look.caption();
        pen.dot(x + 4, y + 2.5f, 2.6f, look.palette().found(), look.palette().found());
        flow.text("found", x + 10, y, small);
        pen.dot(x + 46, y + 2.5f, 2.6f, java.awt.Color.WHITE, look.palette().found());
        flow.text("upper bound only", x + 52, y, small);
        pen.plain(x + 124, y - 1, 2, 8, look.palette().planned());
        flow.text("planned", x + 130, y, small);
    }

    private void drawRow(
            PageFlow flow, Pen pen, Row row, float left, float top, float height, float axisLeft, float axisWidth) {
        TextStyle style = look.table();
        float middle = top - height / 2;
        float textTop = middle + label(row).size() * style.leading() / 2;
        for (String line : label(row)) {
            flow.text(line, left, textTop - style.rise(), style);
            textTop -= style.leading();
        }
        pen.line(
                axisLeft,
                middle,
                axisLeft + axisWidth,
                middle,
                0.25f,
                look.palette().rule());
        if (row.plannedPercent().isPresent()) {
            float x = at(row.plannedPercent().getAsDouble(), axisLeft, axisWidth);
            pen.plain(x - 1, middle - 4.5f, 2, 9, look.palette().planned());
        }
        if (row.foundPercent().isPresent()) {
            double found = row.foundPercent().getAsDouble();
            double u = row.expandedUncertaintyPercent();
            float low = at(found - u, axisLeft, axisWidth);
            float high = at(found + u, axisLeft, axisWidth);
            pen.line(low, middle, high, middle, 1.1f, look.palette().found());
            pen.line(
                    low, middle - 2.5f, low, middle + 2.5f, 0.9f, look.palette().found());
            pen.line(
                    high,
                    middle - 2.5f,
                    high,
                    middle + 2.5f,
                    0.9f,
                    look.palette().found());
            pen.dot(
                    at(found, axisLeft, axisWidth),
                    middle,
                    2.8f,
                    row.upperBound() ? java.awt.Color.WHITE : look.palette().found(),
                    look.palette().found());
        }
        List<String> value = look.typeface().wrap(row.valueText(), style, VALUE - 8);
        flow.text(value.get(0), axisLeft + axisWidth + 8, middle - style.size() * 0.36f, style);
    }

    private float at(double percent, float axisLeft, float axisWidth) {
        double inside = Math.max(0, Math.min(axisEnd, percent));
        return (float) (axisLeft + axisWidth * inside / axisEnd);
    }

    /**
     * One product of one run.
     *
     * @param label run and product
     * @param plannedPercent planned yield, %
     * @param foundPercent yield, %
     * @param expandedUncertaintyPercent U, %; 0 where there is no yield
     * @param upperBound true where the yield is only an upper bound
     * @param valueText value and U as text, or why there is none; short
     */
    record Row(
            String label,
            OptionalDouble plannedPercent,
            OptionalDouble foundPercent,
            double expandedUncertaintyPercent,
            boolean upperBound,
            String valueText) {}
}
