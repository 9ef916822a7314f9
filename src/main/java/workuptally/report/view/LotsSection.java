package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Lot;
import workuptally.tally.LotTally;

/** Weighed lots: net mass, its ratio to theory, and the product in it. */
public final class LotsSection {
    /** Title of the table. */
    public static final String TITLE = "Lots";

    private LotsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        List<TableView.Row> rows = new ArrayList<>();
        double k = review.period().coverageFactor();
        for (RunReview run : review.runs()) {
            for (LotTally lot : run.tally().lots()) {
                rows.add(row(run, lot, k));
            }
        }
        return new TableView(
                TITLE,
                "Net over theory is a ratio of masses and no yield: solvent and impurities count in it. "
                        + Words.coverage(k),
                List.of(
                        Column.text("Run", 14),
                        Column.text("Lot", 12),
                        Column.text("Product", 30),
                        Column.text("Stage", 10),
                        Column.number("Net", "g", 4),
                        Column.number("U of net", "g", 4),
                        Column.number("Net over theory", "%", 1),
                        Column.number("Product fraction", "1", 3),
                        Column.text("Basis", 24),
                        Column.number("Product in it", "g", 4),
                        Column.text("Ends workup", 10)),
                rows);
    }

    private static TableView.Row row(RunReview run, LotTally lot, double k) {
        return new TableView.Row(
                List.of(
                        Cell.of(run.id()),
                        Cell.of(lot.lot().label()),
                        Cell.of(lot.lot().product()),
                        Cell.of(lot.lot().stage().map(Lot.Stage::word).orElse("")),
                        Figures.cell(lot.netGrams(), k),
                        lot.netGrams()
                                .map(net -> Figures.uncertaintyCell(net.expandedUncertainty(k)))
                                .orElseGet(() -> new Cell.Missing("")),
                        Figures.cell(lot.overTheoryPercent(), k),
                        Figures.cell(lot.productFraction(), k),
                        Cell.of(lot.basis().word()),
                        Figures.cell(lot.pureGrams(), k),
                        Words.yesNo(lot.endsWorkup())),
                Optional.empty());
    }
}
