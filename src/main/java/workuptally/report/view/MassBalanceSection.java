package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.tally.MassBalance;

/** Total mass of each workup: in, out, and the gap against gas and evaporation. */
public final class MassBalanceSection {
    /** Title of the table. */
    public static final String TITLE = "Mass balance";

    private MassBalanceSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        List<TableView.Row> rows = new ArrayList<>();
        double k = review.period().coverageFactor();
        for (RunReview run : review.runs()) {
            run.tally().massBalance().ifPresent(balance -> rows.add(row(run, balance, k)));
        }
        return new TableView(
                TITLE,
                "Gap = in − out. Where the balance is not complete, a layer or lot has no mass and the gap is an upper limit. "
                        + Words.coverage(k),
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
                rows);
    }

    private static TableView.Row row(RunReview run, MassBalance balance, double k) {
        double expanded = balance.gapGrams().expandedUncertainty(k);
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Figures.cell(balance.inGrams(), k),
                        Figures.cell(balance.outGrams(), k),
                        Figures.cell(
                                balance.gapGrams().value(),
                                expanded,
                                Optional.of(Live.minus(new Live.InRow("In"), new Live.InRow("Out")))),
                        Figures.uncertaintyCell(expanded),
                        Cell.of(balance.gasGrams()),
                        Cell.of(balance.organicSolventGrams()),
                        Cell.of(
                                balance.gapPercentOfOrganic(),
                                Live.percent(new Live.InRow("Gap"), new Live.InRow("Organic solvent"))),
                        Cell.of(balance.evaporationAllowanceGrams()),
                        Words.yesNo(balance.complete())),
                Optional.empty());
    }
}
