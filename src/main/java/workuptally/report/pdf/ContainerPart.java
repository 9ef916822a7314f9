package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.RegulatoryFact;
import workuptally.model.Container;
import workuptally.model.Finding;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Transfer;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Gap;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.SignatureLines;
import workuptally.report.pdf.layout.TableCell;
import workuptally.report.pdf.layout.TableColumn;
import workuptally.report.pdf.layout.TaggedTable;
import workuptally.report.view.labels.LabelText;
import workuptally.report.view.lines.HazardClass;
import workuptally.report.view.lines.RunFindings;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.containers.ContainerTally;

/** One container as safety staff want it: fill, age, composition to 100 %, hazard classes, fields to fill in. The determination is theirs. */
final class ContainerPart {
    private static final String FACTS =
            "Limits of regulations, as facts. Whether one applies is for trained people to determine, and the local rule comes first: ";
    private static final double NAMED_PERCENT = 1;

    private final Look look;
    private final Review review;
    private final Map<String, List<Finding>> findings;
    private final Limits limits;

    ContainerPart(Look look, Review review) {
        this.look = look;
        this.review = review;
        this.findings = new RowsAboutContainers(review).findings();
        this.limits = review.book().limits();
    }

    /** The blocks of each container, which stand together. */
    List<List<Block>> blocks() {
        return review.containers().stream().map(this::of).toList();
    }

    private List<Block> of(ContainerReview container) {
        List<Block> blocks = new ArrayList<>();
        Container entry = container.tally().container();
        blocks.add(new Gap(8));
        blocks.add(look.heading("Container " + entry.id() + ", " + entry.wasteStream()));
        blocks.add(Paragraph.lead(look, standing(container, entry), look.body()));
        composition(blocks, container);
        additions(blocks, container);
        List<RunFindings> own = RunFindings.each(findings.getOrDefault(entry.id(), List.of()), look.wording());
        if (!own.isEmpty()) {
            List<List<TableCell>> rows = new ArrayList<>();
            own.forEach(f ->
                    rows.add(List.of(TableCell.of(f.severity()), TableCell.of(f.seen()), TableCell.bold(f.action()))));
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.word("State"),
                            TableColumn.text("What was seen"),
                            TableColumn.text("What to do")),
                    rows));
        }
        facts(blocks, container);
        blocks.add(Paragraph.lead(
                look,
                "Local waste code: ____________   pH: ______   flash point: ______   halogens: ______   metals: ______   physical state: liquid / solid / sludge",
                look.body()));
        blocks.add(new SignatureLines(look, List.of("Filled by", "Safety contact at collection")));
        return blocks;
    }

    private void facts(List<Block> blocks, ContainerReview container) {
        List<RegulatoryFact> own = container.facts().stream()
                .filter(fact -> containersOf(fact) < review.containers().size()
                        || review.containers().size() == 1)
                .toList();
        if (!own.isEmpty()) {
            blocks.add(new Paragraph(look, words(FACTS, own), look.caption()));
        }
    }

    private long containersOf(RegulatoryFact fact) {
        return review.containers().stream()
                .filter(c -> c.facts().contains(fact))
                .count();
    }

    private String words(String lead, List<RegulatoryFact> facts) {
        StringJoiner text = new StringJoiner("; ", lead, ".");
        facts.forEach(fact -> text.add(look.figures().inWords(fact.text()) + " [" + fact.citation() + "]"));
        return text.toString();
    }

    /** What bears on every container of the book, once for all of them. */
    List<Block> factsOfAll() {
        List<RegulatoryFact> common = review.containers().stream()
                .flatMap(c -> c.facts().stream())
                .distinct()
                .filter(fact -> review.containers().size() > 1
                        && containersOf(fact) == review.containers().size())
                .toList();
        return common.isEmpty()
                ? List.of()
                : List.of(
                        look.subheading("Limits of regulations that may bear on every container"),
                        new Paragraph(look, words(FACTS, common), look.caption()));
    }

    private String standing(ContainerReview reviewed, Container container) {
        ContainerTally tally = reviewed.tally();
        StringJoiner text = new StringJoiner("; ", "", ".");
        text.add((tally.isLeast() ? "Holds at least " : "Holds ")
                + mass(tally.now().totalGrams()) + ", " + fill(tally.now()) + " (largest fill "
                + look.figures().plain(limits.value(Limit.CONTAINER_FILL)) + "\u00A0%)");
        text.add(container.opened().map(d -> "opened " + d).orElse("day of opening not stated"));
        tally.age().ifPresent(a -> {
            text.add("open " + a.daysOpen() + " days on " + a.asOf());
            a.dueOn()
                    .ifPresent(d -> text.add("local limit " + d
                            + a.lastWorkingDay()
                                    .filter(w -> !w.equals(d))
                                    .map(w -> ", last working day " + w)
                                    .orElse("")));
            if (a.overdue()) {
                text.add("overdue");
            } else if (a.dueNow()) {
                text.add("no working day is left");
            }
        });
        tally.reconciliation()
                .ifPresent(
                        r -> text.add("ledger " + look.figures().fixed(r.ledgerGrams(), 0) + "\u00A0g against bottle "
                                + look.figures().fixed(r.weighedGrams(), 0) + "\u00A0g: "
                                + (r.agrees() ? "agree" : "do not agree")));
        String producer = limits.text(Limit.GROUP);
        text.add("producer " + (producer.isBlank() ? "not stated" : producer));
        String place = (container.location() + " " + container.contact()).strip();
        text.add(place.isEmpty() ? "place and contact not stated" : place);
        return text.toString();
    }

    private String mass(double grams) {
        return look.figures().fixed(grams, 0) + "\u00A0g";
    }

    private String fill(ContainerState state) {
        OptionalDouble percent = state.fillPercent();
        return "about " + look.figures().amount(state.litres(), 2) + "\u00A0L"
                + (percent.isPresent() ? " = " + look.figures().fixed(percent.getAsDouble(), 1) + "\u00A0%" : "");
    }

    private void composition(List<Block> blocks, ContainerReview container) {
        ContainerState state = container.tally().now();
        if (state.totalGrams() <= 0) {
            blocks.add(new Paragraph(look, classes(container)));
            return;
        }
        StringJoiner text = new StringJoiner("; ", "Composition, % by mass: ", ".");
        for (ContainerState.Part part : state.composition(limits.optional(Limit.CONTAINER_TRACE))) {
            text.add(part.substance() + " " + look.figures().fixed(part.massPercent(), 1));
        }
        blocks.add(new Paragraph(look, text.toString()));
        blocks.add(new Paragraph(look, classes(container)));
    }

    /** Hazard words by what it holds, the same as on its label, then the classes of its components from 1 % on. */
    private String classes(ContainerReview container) {
        ContainerState state = container.tally().now();
        Set<String> names = state.grams().entrySet().stream()
                .filter(e -> 100 * e.getValue() / state.totalGrams() >= NAMED_PERCENT)
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        StringJoiner text = new StringJoiner(", ", "Classes of its components from 1\u00A0% on: ", ".");
        text.setEmptyValue("");
        for (HazardClass group : HazardClass.values()) {
            if (container.hazards().stream()
                    .anyMatch(n -> (!n.ofMaterial() || names.contains(n.subject())) && group.of(n))) {
                text.add(group.word());
            }
        }
        List<String> words = LabelText.words(container);
        String hazards = words.isEmpty()
                ? "The tables hold no hazard statement for what it holds; the safety data sheets say."
                : look.figures().inWords(String.join(" ", words));
        return (hazards + " " + text).strip();
    }

    private void additions(List<Block> blocks, ContainerReview container) {
        List<List<TableCell>> rows = new ArrayList<>();
        container.tally().done().forEach(a -> rows.add(row(a, "done")));
        container.tally().proposed().forEach(a -> rows.add(row(a, "proposed")));
        if (!rows.isEmpty()) {
            blocks.add(new TaggedTable(
                    look,
                    List.of(
                            TableColumn.word("Addition"),
                            TableColumn.text("Of"),
                            TableColumn.number("Mass\n(g)"),
                            TableColumn.word("Status"),
                            TableColumn.text("By, on")),
                    rows));
        }
    }

    private List<TableCell> row(ContainerAddition addition, String status) {
        Transfer transfer = addition.transfer();
        return List.of(
                TableCell.bold(transfer.id()),
                TableCell.of(addition.source()),
                TableCell.of(addition.isUnknown() ? "–" : look.figures().significant(addition.totalGrams(), 4)),
                TableCell.of(status),
                TableCell.of((transfer.by() + " "
                                + transfer.date().map(Object::toString).orElse(""))
                        .strip()));
    }
}
