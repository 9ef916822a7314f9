package workuptally.report.view.sheets;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;

/** Limits of regulations that may bear on a container, as facts to read; the determination is made by trained people. */
public final class RegulatorySection {
    /** Title of the table. */
    public static final String TITLE = "Regulatory facts";

    private RegulatorySection() {}

    /** The table of a review; empty without a container that a fact may bear on. */
    public static Optional<TableView> of(Review review) {
        List<TableView.Row> rows = review.containers().stream()
                .flatMap(container -> container.facts().stream()
                        .map(fact -> new TableView.Row(
                                List.of(
                                        Cell.of(container.id()),
                                        Cell.of(stream(container)),
                                        Cell.of(fact.text()),
                                        Cell.of(fact.citation())),
                                Optional.empty())))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(TableView.of(
                        TITLE,
                        "What regulations say, with the place where they say it; local rules win, and the waste determination is made by"
                                + " trained people.",
                        List.of(
                                Column.text("Container", 14),
                                Column.text("Stream", 30),
                                Column.text("Fact", 60),
                                Column.text("Source", 30)),
                        rows));
    }

    private static String stream(ContainerReview container) {
        return container.tally().container().wasteStream();
    }
}
