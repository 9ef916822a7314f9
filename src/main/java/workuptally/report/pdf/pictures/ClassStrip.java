package workuptally.report.pdf.pictures;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Pen;
import workuptally.report.pdf.layout.Picture;
import workuptally.report.pdf.layout.TextStyle;
import workuptally.tally.series.SeriesTally;

/** All yields of a class on one scale, equal ones one above the other; what does not count is hollow, an outlier square. */
public final class ClassStrip implements Picture {
    private static final float AXIS = 20;
    private static final float LEVEL = 6;
    private static final float DOT = 2.3f;
    private static final float CLOSE = 5.4f;
    private static final float INSET = 6;
    private static final int TICK_PERCENT = 10;

    private final Look look;
    private final SeriesTally series;
    private final SeriesTally.Together together;
    private final double low;
    private final double high;
    private final List<Mark> marks = new ArrayList<>();
    private int levels = 1;

    public ClassStrip(Look look, SeriesTally series, SeriesTally.Together together) {
        this.look = look;
        this.series = series;
        this.together = together;
        double least = series.results().stream()
                .mapToDouble(SeriesTally.Result::yieldPercent)
                .min()
                .orElse(0);
        double most = series.results().stream()
                .mapToDouble(SeriesTally.Result::yieldPercent)
                .max()
                .orElse(100);
        this.low = Math.floor(Math.min(least, 90) / TICK_PERCENT) * TICK_PERCENT;
        this.high = Math.ceil(Math.max(most, 100) / TICK_PERCENT) * TICK_PERCENT;
        stack();
    }

    /** Gives each mark the lowest level on which it touches no other. */
    private void stack() {
        List<Float> ends = new ArrayList<>();
        List<SeriesTally.Result> rising = series.results().stream()
                .sorted(Comparator.comparingDouble(SeriesTally.Result::yieldPercent))
                .toList();
        for (SeriesTally.Result result : rising) {
            float x = x(result.yieldPercent());
            int level = 0;
            while (level < ends.size() && ends.get(level) + CLOSE > x) {
                level++;
            }
            if (level == ends.size()) {
                ends.add(x);
            } else {
                ends.set(level, x);
            }
            marks.add(new Mark(x, level, kind(result.run())));
        }
        levels = Math.max(1, ends.size());
    }

    private Kind kind(String run) {
        if (together.outliers().contains(run)) {
            return Kind.OUTLIER;
        }
        boolean left = together.leftOut().stream().anyMatch(text -> text.startsWith(run + ": "));
        return left ? Kind.LEFT_OUT : Kind.COUNTS;
    }

    private float x(double percent) {
        return (float) (INSET + (look.widthPoints() - 2 * INSET) * (percent - low) / (high - low));
    }

    @Override
    public float height() {
        return levels * LEVEL + 6 + AXIS;
    }

    @Override
    public String alternative() {
        StringBuilder text = new StringBuilder("Yields of the class in %:");
        for (SeriesTally.Result result : series.results()) {
            text.append(' ').append(look.figures().fixed(result.yieldPercent(), 1));
            text.append(
                    switch (kind(result.run())) {
                        case COUNTS -> "";
                        case OUTLIER -> " (outlier)";
                        case LEFT_OUT -> " (does not count)";
                    });
        }
        return text.append('.').toString();
    }

    @Override
    public void draw(PageFlow flow, float left, float top) {
        Pen pen = flow.pen();
        float base = top - height() + AXIS;
        float highest = base + levels * LEVEL + 4;
        if (together.medianPercent().isPresent()) {
            middle(pen, left, base, highest);
        }
        pen.line(
                left,
                base,
                left + look.widthPoints(),
                base,
                0.6f,
                look.palette().strongRule());
        TextStyle style = look.chart();
        int every = (high - low) / TICK_PERCENT > 16 ? 5 * TICK_PERCENT : TICK_PERCENT;
        for (double percent = low; percent <= high; percent += every) {
            float x = left + x(percent);
            pen.line(x, base, x, base - 3, 0.6f, look.palette().strongRule());
            String text = look.figures().fixed(percent, 0);
            flow.text(text, x - look.typeface().width(text, style) / 2, base - 9.5f, style);
        }
        for (Mark mark : marks) {
            draw(pen, mark, left + mark.x(), base + 3.5f + mark.level() * LEVEL);
        }
        flow.text(
                "yield, %.  ● counts   ■ outlier   ○ does not count   │ median, with a band of one robust spread to either side",
                left, base - 18, style.in(look.palette().soft()));
    }

    private void middle(Pen pen, float left, float base, float highest) {
        double median = together.medianPercent().getAsDouble();
        if (together.robustSpreadPercent().isPresent()) {
            double spread = together.robustSpreadPercent().getAsDouble();
            float from = x(Math.max(low, median - spread));
            float to = x(Math.min(high, median + spread));
            pen.plain(
                    left + from, base, to - from, highest - base, look.palette().band());
        }
        pen.line(
                left + x(median),
                base,
                left + x(median),
                highest,
                1,
                look.palette().ink());
    }

    private void draw(Pen pen, Mark mark, float x, float y) {
        Color found = look.palette().found();
        switch (mark.kind()) {
            case COUNTS -> pen.dot(x, y, DOT, found, found);
            case LEFT_OUT -> pen.dot(x, y, DOT, Color.WHITE, found);
            case OUTLIER ->
                pen.area(
                        x - DOT,
                        y - DOT,
                        2 * DOT,
                        2 * DOT,
                        look.palette().signal(),
                        look.palette().ink());
        }
    }

    /** What a yield is in its class. */
    private enum Kind {
        COUNTS,
        OUTLIER,
        LEFT_OUT
    }

    private record Mark(float x, int level, Kind kind) {}
}
