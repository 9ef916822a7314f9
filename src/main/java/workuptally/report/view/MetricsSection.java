package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.PeriodMetrics;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.measure.MeasuredValue;
import workuptally.tally.Metrics;

/** Mass metrics per run, and of all runs whose yield can be stated as sum over sum. */
public final class MetricsSection {
    /** Title of the table. */
    public static final String TITLE = "Metrics";

    static final String NOTE =
            "Masses put in per mass of product by assay, up to the crude; where no crude was assayed, per mass of what was purified from it, marked so beside the run. Water counted unless the heading says otherwise. "
                    + "The last rows are the book: sum over sum, and the mean over runs, which is not to be reported as the book's.";

    private MetricsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        List<TableView.Row> rows = new ArrayList<>();
        for (RunReview run : review.runs()) {
            run.tally()
                    .metrics()
                    .ifPresent(m -> rows.add(row(m.ofPurified() ? run.id() + " (purified)" : run.id(), m)));
        }
        PeriodMetrics period = review.period().metrics();
        if (!period.runs().isEmpty()) {
            rows.add(row(
                    "sum over sum",
                    period.pmi(),
                    OptionalDouble.empty(),
                    period.eFactorWithWater(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    period.solventIntensity(),
                    period.waterIntensity(),
                    OptionalDouble.of(period.inGrams()),
                    OptionalDouble.of(period.productGrams())));
            OptionalDouble none = OptionalDouble.empty();
            rows.add(row("mean over runs", period.meanOfPmis(), none, none, none, none, none, none, none, none, none));
        }
        return new TableView(
                TITLE,
                NOTE,
                List.of(
                        Column.text("Run", 16),
                        Column.number("PMI", "g/g", 1),
                        Column.number("PMI of the workup alone", "g/g", 1),
                        Column.number("E-factor with water", "g/g", 1),
                        Column.number("E-factor without water", "g/g", 1),
                        Column.number("Atom economy", "%", 1),
                        Column.number("Reaction mass efficiency", "%", 1),
                        Column.number("Solvent intensity", "g/g", 1),
                        Column.number("Water intensity", "g/g", 1),
                        Column.number("Mass in", "g", 1),
                        Column.number("Product", "g", 3)),
                rows);
    }

    private static TableView.Row row(String run, Metrics metrics) {
        return row(
                run,
                value(metrics.pmi()),
                value(metrics.pmiWorkupOnly()),
                OptionalDouble.of(metrics.eFactorWithWater()),
                OptionalDouble.of(metrics.eFactorWithoutWater()),
                metrics.atomEconomyPercent(),
                metrics.reactionMassEfficiencyPercent()
                        .map(MetricsSection::value)
                        .orElse(OptionalDouble.empty()),
                value(metrics.solventIntensity()),
                value(metrics.waterIntensity()),
                value(metrics.inGrams()),
                value(metrics.productGrams()));
    }

    private static OptionalDouble value(MeasuredValue measured) {
        return OptionalDouble.of(measured.value());
    }

    private static TableView.Row row(String name, OptionalDouble... figures) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(name));
        for (OptionalDouble figure : figures) {
            cells.add(Cell.of(figure));
        }
        return new TableView.Row(cells, Optional.empty());
    }
}
