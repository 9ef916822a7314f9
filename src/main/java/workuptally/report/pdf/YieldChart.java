package workuptally.report.pdf;

import java.awt.Color;
import java.util.OptionalDouble;

/** Found against planned yields on one scale, a row per row of a table: a dot with whiskers of U and a short upright bar. */
final class YieldChart {
    private static final int TICK_PERCENT = 50;
    private static final float DOT = 2.5f;
    private static final float INSET = 4;

    private final Look look;
    private final double axisEndPercent;

    /**
     * A chart whose scale holds 100 % and all values up to 200 %; a larger value is drawn at the end, its number stands beside it.
     *
     * @param largestPercent largest value with its uncertainty, %
     */
    YieldChart(Look look, double largestPercent) {
        this.look = look;
        this.axisEndPercent = Math.max(100, Math.min(200, Math.ceil(largestPercent / 10) * 10));
    }

    /** The head: what the signs mean, and the scale. */
    CellDrawing scale() {
        return new Scale();
    }

    /** A row of the chart. */
    CellDrawing row(Values values) {
        return new Line(values);
    }

    private float at(double percent, float left, float width) {
        double inside = Math.max(0, Math.min(axisEndPercent, percent));
        return (float) (left + INSET + (width - 2 * INSET) * inside / axisEndPercent);
    }

    /**
     * What a row shows.
     *
     * @param plannedPercent planned yield, %
     * @param foundPercent yield, %
     * @param expandedUncertaintyPercent U, %; 0 where there is no yield
     * @param upperBound true where the yield is only an upper bound
     * @param alternative the same in words
     */
    record Values(
            OptionalDouble plannedPercent,
            OptionalDouble foundPercent,
            double expandedUncertaintyPercent,
            boolean upperBound,
            String alternative) {}

    private final class Scale implements CellDrawing {
        @Override
        public String alternative() {
            return "Yield found and planned, % of theory";
        }

        @Override
        public void draw(PageFlow flow, float left, float top, float width, float height) {
            Pen pen = flow.pen();
            TextStyle style = new TextStyle(6.4f, false, look.palette().soft());
            float bottom = top - height;
            float legend = bottom + 12;
            pen.dot(
                    left + INSET,
                    legend + 2.2f,
                    2.1f,
                    look.palette().found(),
                    look.palette().found());
            flow.text("found ± U", left + INSET + 5, legend, style);
            float second = left + INSET + 9 + look.typeface().width("found ± U", style);
            pen.dot(second + 2, legend + 2.2f, 2.1f, Color.WHITE, look.palette().found());
            flow.text("bound", second + 7, legend, style);
            float third = second + 11 + look.typeface().width("bound", style);
            pen.plain(third, legend - 1.2f, 1.6f, 7, look.palette().planned());
            flow.text("planned", third + 4, legend, style);
            for (int percent = 0; percent <= axisEndPercent; percent += TICK_PERCENT) {
                String text = percent == 0 ? "0 %" : Integer.toString(percent);
                float x = at(percent, left, width) - look.typeface().width(text, style) / 2;
                flow.text(text, Math.max(left, x), bottom + 3, style);
            }
        }
    }

    private final class Line implements CellDrawing {
        private final Values values;

        Line(Values values) {
            this.values = values;
        }

        @Override
        public String alternative() {
            return values.alternative();
        }

        @Override
        public void draw(PageFlow flow, float left, float top, float width, float height) {
            Pen pen = flow.pen();
            float middle = top - height / 2;
            for (int percent = 0; percent <= axisEndPercent; percent += TICK_PERCENT) {
                float x = at(percent, left, width);
                pen.line(
                        x,
                        top,
                        x,
                        top - height,
                        percent == 100 ? 0.8f : 0.4f,
                        look.palette().rule());
            }
            if (values.plannedPercent().isPresent()) {
                float x = at(values.plannedPercent().getAsDouble(), left, width);
                pen.plain(x - 0.8f, middle - 4.5f, 1.6f, 9, look.palette().planned());
            }
            if (values.foundPercent().isPresent()) {
                drawFound(pen, values.foundPercent().getAsDouble(), left, middle, width);
            }
        }

        private void drawFound(Pen pen, double found, float left, float middle, float width) {
            Color colour = look.palette().found();
            if (!values.upperBound()) {
                float low = at(found - values.expandedUncertaintyPercent(), left, width);
                float high = at(found + values.expandedUncertaintyPercent(), left, width);
                pen.line(low, middle, high, middle, 1, colour);
                pen.line(low, middle - 2.4f, low, middle + 2.4f, 0.8f, colour);
                pen.line(high, middle - 2.4f, high, middle + 2.4f, 0.8f, colour);
            }
            pen.dot(at(found, left, width), middle, DOT, values.upperBound() ? Color.WHITE : colour, colour);
        }
    }
}
