package workuptally.report.view.sheets;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.model.Limit;
import workuptally.report.view.lines.ProposalLine;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.tally.containers.ContainerState;

/** What each waste container holds with the proposals that fit, a substance a row, to exactly 100.0 %. */
public final class ContainerContentsSection {
    /** Title of the table. */
    public static final String TITLE = "Container contents";

    private ContainerContentsSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        Map<String, List<ProposalLine>> fitting = ProposalLine.fitting(review);
        return TableView.of(
                TITLE,
                "Full names and per cent by mass, the largest first, with the proposals that fit. The waste determination is made by trained"
                        + " people under local rules.",
                List.of(
                        Column.text("Container", 14),
                        Column.text("Stream", 28),
                        Column.text("Substance", 34),
                        Column.text("CAS", 12),
                        Column.number("Mass then", "g", 1),
                        Column.number("Share then", "%", 1)),
                review.containers(),
                container -> rows(review, container, fitting));
    }

    private static Stream<TableView.Row> rows(
            Review review, ContainerReview container, Map<String, List<ProposalLine>> fitting) {
        ContainerState then = ProposalLine.after(container, fitting);
        return then.composition(review.book().limits().optional(Limit.CONTAINER_TRACE)).stream()
                .map(part -> new TableView.Row(
                        List.of(
                                Cell.of(container.id()),
                                Cell.of(container.tally().container().wasteStream()),
                                Cell.of(part.substance()),
                                Cell.of(review.registryNumbers().getOrDefault(part.substance(), "")),
                                Cell.of(part.massGrams()),
                                Cell.of(part.massPercent())),
                        Optional.empty()));
    }
}
