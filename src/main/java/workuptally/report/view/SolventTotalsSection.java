package workuptally.report.view;

import java.util.Optional;
import workuptally.judgement.Review;

/** Solvents over all runs of the book. */
public final class SolventTotalsSection {
    /** Title of the table. */
    public static final String TITLE = "Solvent totals";

    private SolventTotalsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        return new TableView(
                TITLE,
                SolventsSection.NOTE,
                SolventsSection.columns(),
                review.period().solvents().stream()
                        .map(use -> new TableView.Row(SolventsSection.cells(use), Optional.empty()))
                        .toList());
    }
}
