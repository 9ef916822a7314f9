package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.model.Limit;
import workuptally.model.Severity;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.containers.ContainerTally.Age;

/** Fill, age and composition of each waste container. */
public final class ContainersSection {
    /** Title of the table. */
    public static final String TITLE = "Container fill";

    static final String NOTE =
            "Now: contents as stated and transfers done. Then: with the proposals that fit, in order of the table. Volumes by density, "
                    + "added. The waste determination is made by trained people under local rules; read the safety data sheets.";

    private ContainersSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        return TableView.of(
                TITLE,
                NOTE,
                List.of(
                        Column.text("Container", 14),
                        Column.text("Stream", 28),
                        Column.number("Capacity", "L", 1),
                        Column.number("Mass now", "g", 0),
                        Column.number("Volume now", "L", 2),
                        Column.number("Fill now", "%", 1),
                        Column.number("Mass then", "g", 0),
                        Column.number("Volume then", "L", 2),
                        Column.number("Fill then", "%", 1),
                        Column.number("Days open", "", 0),
                        Column.text("Due on", 12),
                        Column.text("Last working day", 16),
                        Column.text("Composition then", 70)),
                review.containers(),
                container -> Stream.of(row(review, container)));
    }

    private static TableView.Row row(Review review, ContainerReview container) {
        ContainerState now = container.tally().now();
        ContainerState then = container.afterProposals();
        Optional<Age> age = container.tally().age();
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(container.id()));
        cells.add(Cell.of(container.tally().container().wasteStream()));
        cells.add(Cell.of(now.capacityLitres()));
        cells.add(Cell.of(now.totalGrams()));
        cells.add(Cell.of(now.litres()));
        cells.add(Cell.of(now.fillPercent()));
        cells.add(Cell.of(then.totalGrams()));
        cells.add(Cell.of(then.litres()));
        cells.add(Cell.of(then.fillPercent()));
        cells.add(Cell.of(age.map(a -> OptionalDouble.of(a.daysOpen())).orElse(OptionalDouble.empty())));
        cells.add(Cell.of(age.flatMap(Age::dueOn).map(Object::toString).orElse("")));
        cells.add(Cell.of(age.flatMap(Age::lastWorkingDay).map(Object::toString).orElse("")));
        cells.add(Cell.of(composition(review, then)));
        boolean over = then.fillPercent().orElse(0) > review.book().limits().value(Limit.CONTAINER_FILL);
        return new TableView.Row(cells, over ? Optional.of(Severity.STOP) : Optional.empty());
    }

    /** Full names and per cent by mass, the largest first, {@code acetone 45.7 %; water 4.1 %}. */
    static String composition(Review review, ContainerState state) {
        return state.composition(review.book().limits().optional(Limit.CONTAINER_TRACE)).stream()
                .map(p -> p.massPercent() == 0
                        ? p.substance() + " < 0.1 %"
                        : String.format(java.util.Locale.ROOT, "%s %.1f %%", p.substance(), p.massPercent()))
                .collect(Collectors.joining("; "));
    }
}
