package workuptally.report.view;

import java.util.List;
import workuptally.judgement.Review;

/** All tables of a review in the order in which a reader wants them. */
public final class ReviewTables {
    private ReviewTables() {}

    /** The tables of a review; a table without rows is kept, so that a reader sees that there is nothing. */
    public static List<TableView> of(Review review) {
        return List.of(
                SummarySection.of(review),
                YieldsSection.of(review),
                LotsSection.of(review),
                ClosuresSection.of(review),
                LayerDecisionsSection.of(review),
                LayerBalanceSection.of(review),
                MassBalanceSection.of(review),
                SolventTotalsSection.of(review),
                SolventsSection.of(review),
                WasteTotalsSection.of(review),
                WasteSection.of(review),
                ContainersSection.of(review),
                MetricsSection.of(review),
                PlanSection.of(review),
                NotComputedSection.of(review),
                FindingsSection.of(review),
                BasisSection.of(review));
    }
}
