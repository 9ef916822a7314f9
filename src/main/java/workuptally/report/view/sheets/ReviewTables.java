package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.List;
import workuptally.judgement.Review;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Wording;

/** All tables of a review in the order in which a reader wants them. */
public final class ReviewTables {
    private ReviewTables() {}

    /**
     * The tables of a review; a table without rows is kept, so that a reader sees that there is nothing. Only what few books have, series,
     * a class, facts about containers, comes with its rows.
     */
    public static List<TableView> of(Review review, Wording wording) {
        List<TableView> tables = new ArrayList<>(List.of(
                SummarySection.of(review, wording),
                YieldsSection.of(review),
                AmountsSection.of(review),
                LotsSection.of(review),
                ClosuresSection.of(review),
                CandidatesSection.of(review),
                LayerDecisionsSection.of(review, wording),
                LayerConditionsSection.of(review, wording),
                ReextractionsSection.of(review),
                LayerBalanceSection.of(review),
                MassBalanceSection.of(review),
                ContactsSection.of(review),
                SolventTotalsSection.of(review),
                SolventsSection.of(review),
                WasteTotalsSection.of(review),
                WasteSection.of(review),
                ContainersSection.of(review),
                ContainerContentsSection.of(review)));
        RegulatorySection.of(review).ifPresent(tables::add);
        tables.add(MetricsSection.of(review));
        SeriesSection.of(review).ifPresent(tables::add);
        ClassSection.of(review).ifPresent(tables::add);
        ClassSection.materials(review).ifPresent(tables::add);
        tables.addAll(List.of(
                PlanSection.of(review),
                NotComputedSection.of(review),
                FindingsSection.of(review, wording),
                BasisSection.of(review)));
        return tables.stream().map(table -> table.readBy(wording)).toList();
    }
}
