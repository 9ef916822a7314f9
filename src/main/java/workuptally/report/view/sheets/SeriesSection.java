package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.RowIndex;
import workuptally.report.view.tables.TableView;
import workuptally.tally.series.SeriesTally;

/**
 * Repeated preparations: the earlier results and those of this book, point after point, with the limits that the earlier ones give. A chart
 * needs eight earlier results; a series with fewer has nothing to show.
 */
public final class SeriesSection {
    /** Title of the table. */
    public static final String TITLE = "Series";

    /** Column of what a point is: the date of an earlier result, or a run of this book. */
    public static final String POINT = "Point";

    /** Column of the results. */
    public static final String YIELD = "Yield";

    /** Column of the mean of the earlier results. */
    public static final String CENTRE = "Mean";

    /** Column of the lower limit. */
    public static final String LOWER = "Lower limit";

    /** Column of the upper limit. */
    public static final String UPPER = "Upper limit";

    private static final String RANGE = "Moving range";

    /** Mean range of two normal values in standard deviations, and upper limit of that range: control chart tables. */
    private static final double D2 = 1.128;

    private static final double D4 = 3.267;
    private static final double LIMIT_FACTOR = 3 / D2;

    private final SeriesTally series;
    private final SeriesTally.Chart chart;
    private final RowIndex yields;
    private final Map<String, RunReview> runs;
    private final int first;
    private final List<TableView.Row> rows = new ArrayList<>();

    private SeriesSection(
            SeriesTally series, SeriesTally.Chart chart, RowIndex yields, Map<String, RunReview> runs, int first) {
        this.series = series;
        this.chart = chart;
        this.yields = yields;
        this.runs = runs;
        this.first = first;
    }

    /** The table of a review; empty without a series that has a chart. */
    public static Optional<TableView> of(Review review) {
        RowIndex yields = YieldsSection.rows(review);
        Map<String, RunReview> runs = byId(review);
        List<TableView.Row> rows = new ArrayList<>();
        for (SeriesTally series : review.series()) {
            series.chart()
                    .ifPresent(
                            chart -> rows.addAll(new SeriesSection(series, chart, yields, runs, rows.size()).rows()));
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(TableView.of(
                        TITLE,
                        "Individuals and moving-range chart. Limits rest on the earlier results alone: mean ± 3 × mean moving range / 1.128."
                                + "\nA result of this book is judged against them and not added. A signal asks what was different this"
                                + " time; a result above the limits is as suspicious as one below.",
                        List.of(
                                Column.text("Series", 14),
                                Column.text(POINT, 14),
                                Column.number(YIELD, "%", 1),
                                Column.number(CENTRE, "%", 1),
                                Column.number(LOWER, "%", 1),
                                Column.number(UPPER, "%", 1),
                                Column.number(RANGE, "%", 1),
                                Column.number("Range limit", "%", 1),
                                Column.text("Signals", 40)),
                        rows));
    }

    static Map<String, RunReview> byId(Review review) {
        Map<String, RunReview> runs = new HashMap<>();
        review.runs().forEach(run -> runs.put(run.id(), run));
        return runs;
    }

    private List<TableView.Row> rows() {
        List<SeriesTally.Point> history = series.history();
        for (int i = 0; i < history.size(); i++) {
            SeriesTally.Point point = history.get(i);
            row(
                    point.date().map(d -> d.toString()).orElse("earlier"),
                    Cell.of(point.yieldPercent(), new Live.Entry(point.place(), point.yieldPercent())),
                    series.movingRangePercent(i),
                    first + i - 1,
                    List.of());
        }
        int last = history.size() - 1;
        for (SeriesTally.Result result : series.results()) {
            OptionalInt row = yields.of(runs.get(result.run()), result.product());
            Optional<Live> live = row.isPresent()
                    ? Optional.of(new Live.InTable(YieldsSection.TITLE, row.getAsInt(), "Yield"))
                    : Optional.empty();
            row(
                    result.run(),
                    cell(result.yieldPercent(), live),
                    series.movingRangePercent(result),
                    first + last,
                    result.signals());
        }
        return rows;
    }

    private void row(String point, Cell yield, OptionalDouble step, int before, List<String> signals) {
        Cell range = step.isPresent()
                ? Cell.of(
                        step.getAsDouble(),
                        new Live.Apart(new Live.InRow(YIELD), new Live.InTable(TITLE, before, YIELD)))
                : new Cell.Missing("");
        rows.add(new TableView.Row(
                List.of(
                        Cell.of(series.series()),
                        Cell.of(point),
                        yield,
                        Cell.of(chart.centrePercent(), baseline(YIELD, first)),
                        Cell.of(chart.lowerLimitPercent(), Live.minus(new Live.InRow(CENTRE), width())),
                        Cell.of(chart.upperLimitPercent(), Live.sum(List.of(new Live.InRow(CENTRE), width()))),
                        range,
                        Cell.of(chart.movingRangeLimitPercent(), Live.times(new Live.Fixed(D4), meanRange())),
                        Cell.of(String.join("; ", signals))),
                Optional.empty()));
    }

    private static Cell cell(double value, Optional<Live> live) {
        return live.map(l -> Cell.of(value, l)).orElseGet(() -> Cell.of(value));
    }

    private Live baseline(String column, int from) {
        return new Live.OfColumn(
                Live.Of.MEAN, TITLE, from, first + series.history().size() - 1, column);
    }

    private Live meanRange() {
        return baseline(RANGE, first + 1);
    }

    private Live width() {
        return Live.times(new Live.Fixed(LIMIT_FACTOR), meanRange());
    }
}
