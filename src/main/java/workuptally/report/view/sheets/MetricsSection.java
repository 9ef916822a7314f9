package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.Review;
import workuptally.judgement.totals.PeriodMetrics;
import workuptally.measure.MeasuredValue;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.tally.waste.Metrics;

/** Mass metrics per run, and of all runs whose yield can be stated as sum over sum. */
public final class MetricsSection {
    /** Title of the table. */
    public static final String TITLE = "Metrics";

    static final String NOTE =
            "Masses put in per mass of product by assay, up to the crude; where no crude was assayed, per mass of what was purified from it, "
                    + "without what purification took in. Water counted unless the heading says otherwise. "
                    + "The last rows are the book: sum over sum, and the mean over runs, which is not to be reported as the book's.";

    private MetricsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        return TableView.of(
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
                                Column.number("Product", "g", 3),
                                Column.text("Product weighed as", 12)),
                        review.runs(),
                        run -> run.tally().metrics().stream().map(metrics -> row(run.id(), metrics)))
                .followedBy(ofBook(review.period().metrics()));
    }

    private static List<TableView.Row> ofBook(PeriodMetrics period) {
        if (period.runs().isEmpty()) {
            return List.of();
        }
        OptionalDouble none = OptionalDouble.empty();
        return List.of(
                row(
                        "sum over sum",
                        "crude",
                        period.pmi(),
                        none,
                        period.eFactorWithWater(),
                        none,
                        none,
                        none,
                        period.solventIntensity(),
                        period.waterIntensity(),
                        OptionalDouble.of(period.inGrams()),
                        OptionalDouble.of(period.productGrams())),
                row(
                        "mean over runs",
                        "crude",
                        period.meanOfPmis(),
                        none,
                        none,
                        none,
                        none,
                        none,
                        none,
                        none,
                        none,
                        none));
    }

    private static TableView.Row row(String run, Metrics metrics) {
        return row(
                run,
                metrics.ofPurified() ? "purified" : "crude",
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

    private static TableView.Row row(String name, String weighedAs, OptionalDouble... figures) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(name));
        for (OptionalDouble figure : figures) {
            cells.add(Cell.of(figure));
        }
        cells.add(Cell.of(weighedAs));
        return new TableView.Row(cells, Optional.empty());
    }
}
