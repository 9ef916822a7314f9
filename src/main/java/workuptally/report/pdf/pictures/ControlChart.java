package workuptally.report.pdf.pictures;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Pen;
import workuptally.report.pdf.layout.Picture;
import workuptally.report.pdf.layout.TextStyle;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.series.SeriesTally;

/**
 * Earlier results and those of this book in their order, with the limits that the earlier ones give, above the moving ranges. A signal is
 * a square with its number, everything else a dot.
 */
public final class ControlChart implements Picture {
    private static final float VALUES = 84;
    private static final float RANGES = 40;
    private static final float BETWEEN = 8;
    private static final float AXIS = 11;
    private static final float LEFT = 40;
    private static final float RIGHT = 92;
    private static final float DOT = 2.3f;
    private static final float LABEL_LINE = 8;
    private static final float LEAST_TICK = 16;

    private final Look look;
    private final SeriesTally series;
    private final boolean withRanges;
    private final List<Point> points = new ArrayList<>();
    private final TextStyle small;

    private ControlChart(Look look, SeriesTally series, boolean withRanges) {
        this.look = look;
        this.withRanges = withRanges;
        this.series = series;
        this.small = look.chart();
        for (int i = 0; i < series.history().size(); i++) {
            points.add(new Point(series.history().get(i).yieldPercent(), series.movingRangePercent(i), Kind.EARLIER));
        }
        for (SeriesTally.Result result : series.results()) {
            points.add(new Point(
                    result.yieldPercent(),
                    series.movingRangePercent(result),
                    result.signals().isEmpty() ? Kind.NEW : Kind.SIGNAL));
        }
    }

    /** Yields above their moving ranges. */
    public static ControlChart ofYieldsAndRanges(Look look, SeriesTally series) {
        return new ControlChart(look, series, true);
    }

    /** Yields alone. */
    public static ControlChart ofYields(Look look, SeriesTally series) {
        return new ControlChart(look, series, false);
    }

    @Override
    public float height() {
        return VALUES + (withRanges ? BETWEEN + RANGES : 0) + AXIS;
    }

    @Override
    public String alternative() {
        ReadableNumbers figures = look.figures();
        StringBuilder text = new StringBuilder("Control chart of series " + series.series() + ", yield in %. ");
        series.chart()
                .ifPresent(c -> text.append("Mean ")
                        .append(figures.fixed(c.centrePercent(), 1))
                        .append(", limits ")
                        .append(figures.fixed(c.lowerLimitPercent(), 1))
                        .append(" to ")
                        .append(figures.fixed(c.upperLimitPercent(), 1))
                        .append(", limit of the moving range ")
                        .append(figures.fixed(c.movingRangeLimitPercent(), 1))
                        .append(". "));
        text.append("In order:");
        for (Point point : points) {
            text.append(' ')
                    .append(figures.fixed(point.percent(), 1))
                    .append(
                            switch (point.kind()) {
                                case EARLIER -> "";
                                case NEW -> " (this book)";
                                case SIGNAL -> " (this book, signal)";
                            });
        }
        return text.append('.').toString();
    }

    @Override
    public void draw(PageFlow flow, float left, float top) {
        Pen pen = flow.pen();
        List<Line> levels = new ArrayList<>();
        List<Line> ranges = new ArrayList<>();
        series.chart().ifPresent(c -> {
            levels.add(new Line("upper limit", c.upperLimitPercent(), true));
            levels.add(new Line("mean", c.centrePercent(), false));
            levels.add(new Line("lower limit", c.lowerLimitPercent(), true));
            ranges.add(new Line("limit", c.movingRangeLimitPercent(), true));
            ranges.add(new Line("mean", c.meanMovingRangePercent(), false));
        });
        List<OptionalDouble> values =
                points.stream().map(p -> OptionalDouble.of(p.percent())).toList();
        panel(flow, pen, "yield, %", levels, values, scale(values, levels, false, top, VALUES), left);
        if (!withRanges) {
            axis(flow, left, top - VALUES);
            return;
        }
        List<OptionalDouble> moving = points.stream().map(Point::movingRange).toList();
        float below = top - VALUES - BETWEEN;
        panel(flow, pen, "range, %", ranges, moving, scale(moving, ranges, true, below, RANGES), left);
        axis(flow, left, below - RANGES);
    }

    /** A scale that holds every value and line, with some room at both ends, or from zero. */
    private static Scale scale(
            List<OptionalDouble> values, List<Line> lines, boolean fromZero, float top, float height) {
        double[] all = DoubleStream.concat(
                        values.stream().filter(OptionalDouble::isPresent).mapToDouble(OptionalDouble::getAsDouble),
                        lines.stream().mapToDouble(Line::percent))
                .toArray();
        double low = fromZero ? 0 : DoubleStream.of(all).min().orElse(0);
        double high = DoubleStream.of(all).max().orElse(1);
        double room = Math.max(0.5, 0.1 * (high - low));
        return new Scale(fromZero ? 0 : low - room, high + room, top, height);
    }

    private void panel(
            PageFlow flow,
            Pen pen,
            String name,
            List<Line> lines,
            List<OptionalDouble> values,
            Scale scale,
            float left) {
        float right = left + look.widthPoints() - RIGHT;
        pen.frame(
                left + LEFT,
                scale.top() - scale.height(),
                right - left - LEFT,
                scale.height(),
                0.4f,
                look.palette().rule());
        flow.text(name, left, scale.top() - 7, small.in(look.palette().soft()));
        float free = Float.MAX_VALUE;
        lines.sort(Comparator.comparingDouble(Line::percent).reversed());
        for (Line line : lines) {
            float y = scale.at(line.percent());
            pen.dashed(
                    left + LEFT,
                    y,
                    right,
                    y,
                    line.limit() ? 0.8f : 0.6f,
                    line.limit(),
                    look.palette().ink());
            float label = Math.min(y - 2.2f, free);
            flow.text(line.name() + " " + look.figures().fixed(line.percent(), 1), right + 5, label, small);
            free = label - LABEL_LINE;
        }
        connect(pen, values, scale, left);
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i).isPresent()) {
                mark(
                        pen,
                        points.get(i).kind(),
                        x(left, i),
                        scale.at(values.get(i).getAsDouble()));
            }
        }
    }

    /** Earlier results are joined in their order; each of this book stands by itself, since it is judged by itself. */
    private void connect(Pen pen, List<OptionalDouble> values, Scale scale, float left) {
        for (int i = 1; i < values.size(); i++) {
            boolean earlier = points.get(i).kind() == Kind.EARLIER;
            if (earlier && values.get(i - 1).isPresent() && values.get(i).isPresent()) {
                pen.line(
                        x(left, i - 1),
                        scale.at(values.get(i - 1).getAsDouble()),
                        x(left, i),
                        scale.at(values.get(i).getAsDouble()),
                        0.5f,
                        look.palette().soft());
            }
        }
    }

    private void mark(Pen pen, Kind kind, float x, float y) {
        Color found = look.palette().found();
        switch (kind) {
            case EARLIER -> pen.dot(x, y, DOT, Color.WHITE, found);
            case NEW -> pen.dot(x, y, DOT, found, found);
            case SIGNAL ->
                pen.area(
                        x - DOT - 0.7f,
                        y - DOT - 0.7f,
                        2 * DOT + 1.4f,
                        2 * DOT + 1.4f,
                        look.palette().signal(),
                        look.palette().ink());
        }
    }

    private void axis(PageFlow flow, float left, float bottom) {
        flow.text("no.", left, bottom - 8, small.in(look.palette().soft()));
        int every = Math.max(1, (int) Math.ceil(LEAST_TICK / step()));
        for (int i = 0; i < points.size(); i++) {
            if (i % every == 0) {
                String number = Integer.toString(i + 1);
                flow.text(number, x(left, i) - look.typeface().width(number, small) / 2, bottom - 8, small);
            }
        }
    }

    private float step() {
        return (look.widthPoints() - LEFT - RIGHT) / points.size();
    }

    private float x(float left, int index) {
        return left + LEFT + step() * (index + 0.5f);
    }

    /** What a point is. */
    private enum Kind {
        EARLIER,
        NEW,
        SIGNAL
    }

    private record Point(double percent, OptionalDouble movingRange, Kind kind) {}

    private record Line(String name, double percent, boolean limit) {}

    private record Scale(double low, double high, float top, float height) {
        float at(double percent) {
            return (float) (top - height + height * (percent - low) / (high - low));
        }
    }
}
