package workuptally.report.view.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.model.Field;
import workuptally.model.Limit;
import workuptally.model.Severity;
import workuptally.report.view.lines.ProposalLine;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.LiveEntries;
import workuptally.report.view.tables.TableView;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.containers.ContainerTally.Age;

/** Fill, age and composition of each waste container. */
public final class ContainersSection {
    /** Title of the table. */
    public static final String TITLE = "Container fill";

    private static final int NAMED = 3;

    static final String NOTE =
            "Now: contents as stated and transfers done. Then: with the proposals that fit, in order of the table. Volumes by density, "
                    + "added. The waste determination is made by trained people under local rules; read the safety data sheets.";

    private ContainersSection() {}

    /** The table of a review. */
    public static TableView of(Review review) {
        Map<String, List<ProposalLine>> fitting = ProposalLine.fitting(review);
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
                        Column.number("Largest fill", "%", 0),
                        Column.number("Days open", "", 0),
                        Column.text("Due on", 12),
                        Column.text("Last working day", 16),
                        Column.text("Composition then", 50)),
                review.containers(),
                container -> Stream.of(row(review, container, fitting)));
    }

    private static TableView.Row row(
            Review review, ContainerReview container, Map<String, List<ProposalLine>> fitting) {
        ContainerState now = container.tally().now();
        ContainerState then = ProposalLine.after(container, fitting);
        Optional<Age> age = container.tally().age();
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(container.id()));
        cells.add(Cell.of(container.tally().container().wasteStream()));
        cells.add(
                now.capacityLitres().isEmpty()
                        ? new Cell.Missing("")
                        : new Cell.Number(
                                now.capacityLitres().getAsDouble(),
                                Cell.Number.AS_COLUMN,
                                LiveEntries.of(container.tally().container().capacityLitres())));
        cells.addAll(fill(now, container.tally().then(), container.tally().done(), "now"));
        List<ContainerAddition> additions = new ArrayList<>(container.tally().done());
        fitting.getOrDefault(container.id(), List.of()).stream()
                .map(ProposalLine::addition)
                .forEach(additions::add);
        cells.addAll(fill(then, container.tally().then(), additions, "then"));
        cells.add(Cell.of(review.book().limits().value(Limit.CONTAINER_FILL), Live.Named.of(Limit.CONTAINER_FILL)));
        cells.add(Cell.of(age.map(a -> OptionalDouble.of(a.daysOpen())).orElse(OptionalDouble.empty())));
        cells.add(Cell.of(age.flatMap(Age::dueOn).map(Object::toString).orElse("")));
        cells.add(Cell.of(age.flatMap(Age::lastWorkingDay).map(Object::toString).orElse("")));
        cells.add(Cell.of(largestParts(review, then)));
        boolean over = then.fillPercent().orElse(0) > review.book().limits().value(Limit.CONTAINER_FILL);
        return new TableView.Row(cells, over ? Optional.of(Severity.STOP) : Optional.empty());
    }

    /** Mass, volume and fill: as stated, with what came to it. */
    private static List<Cell> fill(
            ContainerState state, ContainerState stated, List<ContainerAddition> additions, String when) {
        List<Live> grams = new ArrayList<>(List.of(new Live.Fixed(stated.totalGrams())));
        List<Live> litres = new ArrayList<>(List.of(new Live.Fixed(stated.litres())));
        for (ContainerAddition addition : additions) {
            Live mass = mass(addition);
            grams.add(mass);
            litres.add(
                    addition.totalGrams() > 0
                            ? Live.times(new Live.Fixed(addition.millilitres() / 1000 / addition.totalGrams()), mass)
                            : new Live.Fixed(addition.millilitres() / 1000));
        }
        return List.of(
                Cell.of(state.totalGrams(), Live.sum(grams)),
                Cell.of(state.litres(), Live.sum(litres)),
                state.fillPercent().isEmpty()
                        ? new Cell.Missing("")
                        : Cell.of(
                                state.fillPercent().getAsDouble(),
                                Live.percent(new Live.InRow("Volume " + when), new Live.InRow("Capacity"))));
    }

    /** As the transfer says; of one without an amount, that of its layers. */
    private static Live mass(ContainerAddition addition) {
        double grams = addition.totalGrams();
        Field entered = addition.transfer().massGrams();
        boolean counts = entered.entered()
                .filter(mass -> Live.agree(mass.value(), grams))
                .isPresent();
        return LiveEntries.of(entered).filter(live -> counts).orElseGet(() -> new Live.Fixed(grams));
    }

    /** The largest parts by mass, {@code acetone 45.7 %; water 4.1 %; 3 more}; all of them stand in {@link ContainerContentsSection}. */
    private static String largestParts(Review review, ContainerState state) {
        List<ContainerState.Part> parts =
                state.composition(review.book().limits().optional(Limit.CONTAINER_TRACE));
        String more = parts.size() > NAMED ? "; " + (parts.size() - NAMED) + " more" : "";
        return parts.stream()
                .limit(NAMED)
                .map(p -> p.massPercent() == 0
                        ? p.substance() + " < 0.1 %"
                        : String.format(java.util.Locale.ROOT, "%s %.1f %%", p.substance(), p.massPercent()))
                .collect(Collectors.joining("; ", "", more));
    }
}
