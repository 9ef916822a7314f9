package workuptally.report.pdf.layout;

import java.util.OptionalDouble;

/** Horizontal bars from zero on one scale, a row per row of a table. The numbers stand in a column beside them. */
public final class Bars {
    private static final float INSET = 4;
    private static final float THICKNESS = 7;

    private final Look look;
    private final String what;
    private final double axisEnd;

    /**
     * Bars whose scale ends at a round number.
     *
     * @param what what is shown, with its unit
     * @param largest the largest value
     */
    public Bars(Look look, String what, double largest) {
        this.look = look;
        this.what = what;
        this.axisEnd = roundUp(largest);
    }

    /** The next 1, 2 or 5 times a power of ten; 1 where there is nothing to show. */
    private static double roundUp(double largest) {
        if (!(largest > 0) || Double.isInfinite(largest)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(largest)));
        for (double step : new double[] {1, 2, 5}) {
            if (largest <= step * power) {
                return step * power;
            }
        }
        return 10 * power;
    }

    /** The head: what is shown, and the scale. */
    public CellDrawing scale() {
        return new Scale();
    }

    /**
     * A row.
     *
     * @param value value; nothing is drawn without one
     * @param mark where a short upright bar stands, for example a limit
     * @param strong true for the row that the table is about
     * @param words the same in words; drawn too where there is no value
     */
    public CellDrawing row(OptionalDouble value, OptionalDouble mark, boolean strong, String words) {
        return new Row(value, mark, strong, words);
    }

    private TextStyle small() {
        return look.chart().in(look.palette().soft());
    }

    private float at(double value, float left, float width) {
        double inside = Math.max(0, Math.min(axisEnd, value));
        return (float) (left + INSET + (width - 2 * INSET) * inside / axisEnd);
    }

    private final class Scale implements CellDrawing {
        @Override
        public String alternative() {
            return what + ", bars from 0 to " + end();
        }

        private String end() {
            return look.figures().significant(axisEnd, 1);
        }

        @Override
        public void draw(PageFlow flow, float left, float top, float width, float height) {
            float bottom = top - height;
            TextStyle style = small();
            flow.text(look.typeface().fit(what, style, width - 2 * INSET), left + INSET, bottom + 12, style);
            flow.text("0", left + INSET, bottom + 3, style);
            flow.text(end(), left + width - INSET - look.typeface().width(end(), style), bottom + 3, style);
        }
    }

    private record Bar(OptionalDouble value, OptionalDouble mark, boolean strong) {}

    private final class Row implements CellDrawing {
        private final Bar bar;
        private final String words;

        Row(OptionalDouble value, OptionalDouble mark, boolean strong, String words) {
            this.bar = new Bar(value, mark, strong);
            this.words = words;
        }

        @Override
        public String alternative() {
            return words;
        }

        @Override
        public void draw(PageFlow flow, float left, float top, float width, float height) {
            Pen pen = flow.pen();
            // numbers stand in the first line of a row, whatever its height
            float middle = top - Math.min(height, look.table().leading() + 2.6f) / 2;
            float bottom = middle - THICKNESS / 2;
            float end = left + width - INSET;
            pen.line(
                    left + INSET,
                    top,
                    left + INSET,
                    top - height,
                    0.6f,
                    look.palette().strongRule());
            pen.line(end, top, end, top - height, 0.4f, look.palette().rule());
            if (bar.value().isPresent()) {
                float to = at(bar.value().getAsDouble(), left, width);
                Palette.Fill fill = bar.strong()
                        ? look.palette().isolated()
                        : look.palette().portion(0);
                pen.area(
                        left + INSET,
                        bottom,
                        to - left - INSET,
                        THICKNESS,
                        fill,
                        look.palette().ink());
            } else {
                TextStyle style = small();
                flow.text(look.typeface().line(words), left + INSET + 3, middle - 2.3f, style);
            }
            if (bar.mark().isPresent()) {
                float x = at(bar.mark().getAsDouble(), left, width);
                pen.plain(
                        x - 0.8f,
                        bottom - 1.5f,
                        1.6f,
                        THICKNESS + 3,
                        look.palette().planned());
            }
        }
    }
}
