package workuptally.report.pdf.pictures;

import java.util.List;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Picture;

/** Bars from zero on one scale, the value at the end of each. */
public final class ValueBars implements Picture {
    private static final float BAR = 9;
    private static final float STEP = 13;
    private static final float LEAST_LABEL = 100;
    private static final float LABEL_SHARE = 0.5f;
    private static final float VALUE = 64;

    private final Look look;
    private final String what;
    private final List<Bar> bars;
    private final double end;

    /**
     * Bars.
     *
     * @param what what is shown, for who does not see it
     * @param bars bars from top to bottom
     */
    public ValueBars(Look look, String what, List<Bar> bars) {
        this.look = look;
        this.what = what;
        this.bars = List.copyOf(bars);
        this.end = Math.max(
                1e-9,
                bars.stream()
                        .mapToDouble(b -> Math.max(b.value(), b.mark().orElse(0)))
                        .max()
                        .orElse(1));
    }

    @Override
    public float height() {
        return bars.size() * STEP + 2;
    }

    @Override
    public String alternative() {
        StringJoiner text = new StringJoiner("; ", what + ": ", ".");
        bars.forEach(b -> text.add(b.label() + " " + b.text()
                + (b.mark().isEmpty()
                        ? ""
                        : b.value() > b.mark().getAsDouble() ? ", above the line" : ", not above it")));
        return text.toString();
    }

    /** Room for the widest label, at most half of the width. */
    private float label() {
        double widest = bars.stream()
                .mapToDouble(b -> look.typeface().width(look.typeface().line(b.label()), look.chart()) + 8)
                .max()
                .orElse(0);
        return (float) Math.max(LEAST_LABEL, Math.min(look.widthPoints() * LABEL_SHARE, widest));
    }

    @Override
    public void draw(PageFlow flow, float left, float top) {
        float label = label();
        float width = look.widthPoints() - label - VALUE;
        float y = top;
        for (Bar bar : bars) {
            flow.text(look.typeface().fit(bar.label(), look.chart(), label - 6), left, y - 7.5f, look.chart());
            float wide = (float) (width * bar.value() / end);
            flow.pen()
                    .area(
                            left + label,
                            y - BAR,
                            wide,
                            BAR,
                            look.palette().portion(0),
                            look.palette().ink());
            float beside = wide;
            if (bar.mark().isPresent()) {
                float at = (float) (width * bar.mark().getAsDouble() / end);
                flow.pen()
                        .line(
                                left + label + at,
                                y + 1,
                                left + label + at,
                                y - BAR - 1,
                                1.6f,
                                look.palette().ink());
                beside = Math.max(wide, at);
            }
            flow.text(bar.text(), left + label + beside + 4, y - 7.5f, look.chart());
            y -= STEP;
        }
        flow.pen()
                .line(
                        left + label,
                        top + 1,
                        left + label,
                        y + 2,
                        0.8f,
                        look.palette().strongRule());
    }

    /**
     * A bar.
     *
     * @param label what it is
     * @param value length, 0 or more
     * @param mark where an upright line crosses the bar; empty without one
     * @param text the value with its unit
     */
    public record Bar(String label, double value, OptionalDouble mark, String text) {}
}
