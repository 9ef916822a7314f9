package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Limit;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.RowIndex;
import workuptally.report.view.tables.ShownFigures;
import workuptally.report.view.tables.TableView;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.balance.MassBalance;

/** Total mass of each workup: in, out, and the gap against gas and evaporation. */
public final class MassBalanceSection {
    /** Title of the table. */
    public static final String TITLE = "Mass balance";

    /** Holds where no solvent with an allowance of its own was used; else the tool's figure stands. */
    private static final Live ALLOWANCE = Live.over(
            Live.times(new Live.InRow("Organic solvent"), Live.Named.of(Limit.EVAPORATION_ALLOWANCE)),
            new Live.Fixed(100));

    private MassBalanceSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        double k = review.period().coverageFactor();
        Places places =
                new Places(LotsSection.rows(review), LayerBalanceSection.rows(review), AmountsSection.rows(review));
        return TableView.of(
                TITLE,
                "Gap = in − out. Where the balance is not complete, a layer or lot has no mass and the gap is an upper limit. "
                        + ShownFigures.coverage(k),
                List.of(
                        Column.text("Run", 14),
                        Column.number("In", "g", 2),
                        Column.number("Out", "g", 2),
                        Column.number("Gap", "g", 2),
                        Column.number("U of gap", "g", 2),
                        Column.number("Gas expected", "g", 2),
                        Column.number("Organic solvent", "g", 2),
                        Column.number("Gap of organic", "%", 1),
                        Column.number("Evaporation allowance", "g", 2),
                        Column.text("Complete", 10)),
                review.runs(),
                run -> run.tally().massBalance().stream().map(balance -> row(run, places, balance, k)));
    }

    /** The parts of one side; what is weighed in a lot or layer, or charged as an entry says, is read from there. */
    private static Optional<Live> live(RunReview run, Places places, MassBalance balance, MassBalance.Side side) {
        List<Live> parts = balance.lines().stream()
                .filter(line -> line.side() == side)
                .map(line -> side == MassBalance.Side.IN ? charged(run, places, line) : weighed(run, places, line))
                .toList();
        return parts.isEmpty() ? Optional.empty() : Optional.of(Live.sum(parts));
    }

    private static Live charged(RunReview run, Places places, MassBalance.Line line) {
        double grams = line.grams().value();
        List<ChargeAmount> charges = run.tally().amounts().stream()
                .filter(a -> line.category() == MassBalance.Category.CHARGE
                        && a.charge().material().equals(line.label()))
                .toList();
        OptionalInt row = places.amounts().of(run, line.label());
        boolean sameMass = charges.size() == 1
                && charges.get(0).massGrams().filter(m -> m.value() == grams).isPresent();
        return sameMass && row.isPresent()
                ? new Live.InTable(AmountsSection.TITLE, row.getAsInt(), AmountsSection.MASS)
                : new Live.Fixed(grams);
    }

    private static Live weighed(RunReview run, Places places, MassBalance.Line line) {
        OptionalInt lot = places.lots().of(run, line.label());
        if (lot.isPresent()) {
            return new Live.InTable(LotsSection.TITLE, lot.getAsInt(), "Net");
        }
        OptionalInt layer = places.layers().of(run, line.label());
        boolean sameMass = run.tally().layer(line.label()).stream()
                .flatMap(l -> l.massGrams().stream())
                .anyMatch(m -> m.value() == line.grams().value());
        return layer.isPresent() && sameMass
                ? new Live.InTable(LayerBalanceSection.TITLE, layer.getAsInt(), "Mass")
                : new Live.Fixed(line.grams().value());
    }

    private record Places(RowIndex lots, RowIndex layers, RowIndex amounts) {}

    private static TableView.Row row(RunReview run, Places places, MassBalance balance, double k) {
        double expanded = balance.gapGrams().expandedUncertainty(k);
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        ShownFigures.cell(
                                Optional.of(balance.inGrams()), k, live(run, places, balance, MassBalance.Side.IN)),
                        ShownFigures.cell(
                                Optional.of(balance.outGrams()), k, live(run, places, balance, MassBalance.Side.OUT)),
                        ShownFigures.cell(
                                balance.gapGrams().value(),
                                expanded,
                                Optional.of(Live.minus(new Live.InRow("In"), new Live.InRow("Out")))),
                        ShownFigures.uncertaintyCell(expanded, k),
                        Cell.of(balance.gasGrams()),
                        Cell.of(balance.organicSolventGrams()),
                        balance.gapPercentOfOrganic().isPresent()
                                ? Cell.of(
                                        balance.gapPercentOfOrganic().getAsDouble(),
                                        Live.percent(new Live.InRow("Gap"), new Live.InRow("Organic solvent")))
                                : Cell.of(OptionalDouble.empty()),
                        Cell.of(balance.evaporationAllowanceGrams(), ALLOWANCE),
                        Cell.yesNo(balance.complete())),
                Optional.empty());
    }
}
