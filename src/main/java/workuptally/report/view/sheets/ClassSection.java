package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.List;
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
import workuptally.tally.series.SeriesTally.Together;

/** Many runs of one preparation side by side: what counts, how far each lies from the median, and what the class used against the plan. */
public final class ClassSection {
    /** Title of the table of runs. */
    public static final String TITLE = "Class";

    /** Title of the table of materials. */
    public static final String MATERIALS = "Class materials";

    /** 1.4826 makes the median absolute deviation an estimate of σ of a normal distribution: NIST/SEMATECH e-Handbook, 1.3.5.6. */
    private static final double NORMAL_CONSISTENCY = 1.4826;

    private static final String COUNTED = "Counted";
    private static final String DISTANCE = "From the median";

    private ClassSection() {}

    /** The table of runs; empty without a class. */
    public static Optional<TableView> of(Review review) {
        RowIndex yields = YieldsSection.rows(review);
        List<TableView.Row> rows = new ArrayList<>();
        for (SeriesTally series : review.series()) {
            series.together().ifPresent(together -> rows.addAll(rows(review, yields, series, together, rows.size())));
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(TableView.of(
                        TITLE,
                        "Eight or more runs of one preparation. Counted: yields by an assay, not above 100 %, copied rows once."
                                + "\nRobust spread: 1.4826 times the median distance from the median. A run further off than 3.5 of"
                                + " them is named; it is a question, not a verdict.",
                        List.of(
                                Column.text("Series", 14),
                                Column.text("Run", 14),
                                Column.text("Product", 30),
                                Column.number("Yield", "%", 1),
                                Column.number(COUNTED, "%", 1),
                                Column.number("Median", "%", 1),
                                Column.number(DISTANCE, "%", 1),
                                Column.number("Robust spread", "%", 1),
                                Column.text("Remark", 44)),
                        rows));
    }

    /** What the class used, material by material; empty without a class. */
    public static Optional<TableView> materials(Review review) {
        List<TableView.Row> rows = new ArrayList<>();
        for (SeriesTally series : review.series()) {
            series.together().ifPresent(together -> rows.addAll(materials(series.series(), together)));
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(TableView.of(
                        MATERIALS,
                        "Sums over the runs of a class that give both amounts in the same kind of unit. The last lines have no plan.",
                        List.of(
                                Column.text("Series", 14),
                                Column.text("What", 36),
                                Column.text("Unit", 8),
                                Column.number("Planned", "", 2),
                                Column.number("Actual", "", 2),
                                Column.number("Actual of planned", "%", 1)),
                        rows));
    }

    private static List<TableView.Row> rows(
            Review review, RowIndex yields, SeriesTally series, Together together, int first) {
        List<RunReview> runs = review.runs().stream()
                .filter(r -> r.tally()
                        .run()
                        .head()
                        .series()
                        .strip()
                        .equalsIgnoreCase(series.series().strip()))
                .toList();
        int last = first + runs.size() - 1;
        List<TableView.Row> rows = new ArrayList<>();
        for (RunReview run : runs) {
            Optional<SeriesTally.Result> result = series.results().stream()
                    .filter(r -> r.run().equals(run.id()))
                    .findFirst();
            Optional<String> leftOut = together.leftOut().stream()
                    .filter(text -> text.startsWith(run.id() + ": "))
                    .map(text -> text.substring(run.id().length() + 2))
                    .findFirst();
            rows.add(row(series.series(), run, result, leftOut, together, yields, first, last));
        }
        return rows;
    }

    private static TableView.Row row(
            String series,
            RunReview run,
            Optional<SeriesTally.Result> result,
            Optional<String> leftOut,
            Together together,
            RowIndex yields,
            int first,
            int last) {
        Cell none = new Cell.Missing("");
        Optional<Double> counted =
                leftOut.isPresent() ? Optional.empty() : result.map(SeriesTally.Result::yieldPercent);
        Cell median = together.medianPercent().isPresent()
                ? Cell.of(together.medianPercent().getAsDouble(), median(COUNTED, first, last))
                : none;
        Cell distance = counted.map(together::fromMedianPercent)
                .filter(OptionalDouble::isPresent)
                .map(d -> Cell.of(d.getAsDouble(), new Live.Apart(new Live.InRow(COUNTED), new Live.InRow("Median"))))
                .orElse(none);
        Cell spread = together.robustSpreadPercent().isPresent()
                ? Cell.of(
                        together.robustSpreadPercent().getAsDouble(),
                        Live.times(new Live.Fixed(NORMAL_CONSISTENCY), median(DISTANCE, first, last)))
                : none;
        String remark = leftOut.orElse(
                together.outliers().contains(run.id()) ? "further than 3.5 robust spreads from the median" : "");
        return new TableView.Row(
                List.of(
                        Cell.of(series),
                        Cell.of(run.id()),
                        Cell.of(result.map(SeriesTally.Result::product).orElse("")),
                        result.map(r -> yieldCell(run, r, yields)).orElse(none),
                        counted.map(y -> Cell.of(y, new Live.InRow("Yield"))).orElse(none),
                        median,
                        distance,
                        spread,
                        Cell.of(remark)),
                Optional.empty());
    }

    private static Cell yieldCell(RunReview run, SeriesTally.Result result, RowIndex yields) {
        OptionalInt row = yields.of(run, result.product());
        return row.isPresent()
                ? Cell.of(result.yieldPercent(), new Live.InTable(YieldsSection.TITLE, row.getAsInt(), "Yield"))
                : Cell.of(result.yieldPercent());
    }

    private static Live median(String column, int first, int last) {
        return new Live.OfColumn(Live.Of.MEDIAN, TITLE, first, last, column);
    }

    private static List<TableView.Row> materials(String series, Together together) {
        Cell none = new Cell.Missing("");
        List<TableView.Row> rows = new ArrayList<>();
        for (SeriesTally.Material material : together.materials()) {
            Cell share = material.planned() == 0
                    ? none
                    : Cell.of(
                            material.actualPercentOfPlanned(),
                            Live.percent(new Live.InRow("Actual"), new Live.InRow("Planned")));
            rows.add(new TableView.Row(
                    List.of(
                            Cell.of(series),
                            Cell.of(material.material()),
                            Cell.of(material.unit()),
                            Cell.of(material.planned()),
                            Cell.of(material.actual()),
                            share),
                    Optional.empty()));
        }
        rows.add(total(series, "organic solvents put in", together.solventGrams()));
        rows.add(total(series, "layers kept", together.keptGrams()));
        return rows;
    }

    private static TableView.Row total(String series, String what, double grams) {
        Cell none = new Cell.Missing("");
        return new TableView.Row(
                List.of(Cell.of(series), Cell.of(what), Cell.of("g"), none, Cell.of(grams), none), Optional.empty());
    }
}
