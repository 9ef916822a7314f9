package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.tally.amounts.NotComputed;

/** Figures that were not computed, and the entry that would unlock each. */
public final class NotComputedSection {
    /** Title of the table. */
    public static final String TITLE = "Not computed";

    private NotComputedSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        return TableView.of(
                TITLE,
                "A figure that is missing here was left out, not taken as zero.",
                List.of(
                        Column.text("Run", 14),
                        Column.text("What", 40),
                        Column.text("Because", 50),
                        Column.text("Unlocked by", 40)),
                review.runs(),
                run -> run.tally().notComputed().stream().map(gap -> row(run, gap)));
    }

    private static TableView.Row row(RunReview run, NotComputed gap) {
        return new TableView.Row(
                List.of(Cell.of(run.id()), Cell.of(gap.what()), Cell.of(gap.because()), Cell.of(gap.unlockedBy())),
                Optional.empty());
    }
}
