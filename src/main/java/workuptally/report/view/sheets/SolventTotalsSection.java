package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.judgement.Review;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.TableView;

/** Solvents over all runs of the book. */
public final class SolventTotalsSection {
    /** Title of the table. */
    public static final String TITLE = "Solvent totals";

    private static final Set<String> SUMMED = Set.of(
            "Charged", "Workup", "To re-use", "In distillates", "In layers", "On cakes", "In lots", "Purification");

    private SolventTotalsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        return TableView.of(
                TITLE,
                SolventsSection.NOTE,
                SolventsSection.columns(),
                review.period().solvents().stream()
                        .map(use -> new TableView.Row(totals(SolventsSection.cells(use)), Optional.empty()))
                        .toList());
    }

    /** Masses as sums over the runs; what follows from them in the same row stays as it is. */
    private static List<Cell> totals(List<Cell> cells) {
        List<Cell> totals = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            String column = SolventsSection.columns().get(i).name();
            boolean summed = SUMMED.contains(column);
            totals.add(
                    summed && cells.get(i) instanceof Cell.Number number
                            ? Cell.of(
                                    number.value(),
                                    new Live.SumWhere(SolventsSection.TITLE, column, "Solvent", "Solvent"))
                            : cells.get(i));
        }
        return totals;
    }
}
