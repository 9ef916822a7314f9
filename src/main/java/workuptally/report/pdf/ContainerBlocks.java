package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.containers.ContainerReview;
import workuptally.model.Container;
import workuptally.model.Finding;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Transfer;
import workuptally.tally.containers.ContainerAddition;
import workuptally.tally.containers.ContainerState;
import workuptally.tally.containers.ContainerTally;

/** One container as safety staff want it: fill, age, composition to 100 %, additions and proposals. The determination is theirs. */
final class ContainerBlocks {
    private static final String FACTS =
            "Limits of regulations that may bear on it, as facts. Whether one applies is for trained people to"
                    + " determine, and the local rule comes first: ";

    private final Look look;
    private final Review review;
    private final Map<String, List<Finding>> findings;
    private final Limits limits;

    ContainerBlocks(Look look, Review review, ContainerRows rows) {
        this.look = look;
        this.review = review;
        this.findings = rows.findings();
        this.limits = review.book().limits();
    }

    /** The blocks of each container, which stand together. */
    List<List<Block>> blocks() {
        return review.containers().stream().map(this::of).toList();
    }

    private List<Block> of(ContainerReview container) {
        List<Block> blocks = new ArrayList<>();
        Container entry = container.tally().container();
        blocks.add(look.subheading("Container " + entry.id() + ", " + entry.wasteStream()));
        blocks.add(Paragraph.lead(look, standing(container, entry), look.body()));
        composition(blocks, container);
        additions(blocks, container);
        List<Finding> own = findings.getOrDefault(entry.id(), List.of());
        if (!own.isEmpty()) {
            blocks.add(new FindingTable(look).of(own));
        }
        facts(blocks, container);
        blocks.add(new SignatureLines(look, List.of("Filled by", "Safety contact at collection")));
        return blocks;
    }

    /** What regulations say that may bear on the container. */
    private void facts(List<Block> blocks, ContainerReview container) {
        if (container.facts().isEmpty()) {
            return;
        }
        StringJoiner text = new StringJoiner("; ", FACTS, ".");
        container.facts().forEach(fact -> text.add(fact.text() + " [" + fact.citation() + "]"));
        blocks.add(new Paragraph(look, text.toString(), look.caption()));
    }

    private String standing(ContainerReview reviewed, Container container) {
        ContainerTally tally = reviewed.tally();
        StringJoiner text = new StringJoiner("; ", "", ".");
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
            }
        });
        text.add("holds " + mass(tally.now().totalGrams()) + ", " + fill(tally.now()));
        if (!reviewed.proposals().isEmpty()) {
            text.add("with the proposals that fit "
                    + mass(reviewed.afterProposals().totalGrams()) + ", "
                    + fill(reviewed.afterProposals()) + " (limit "
                    + look.figures().plain(limits.value(Limit.CONTAINER_FILL)) + "\u00A0%)");
        }
        tally.reconciliation()
                .ifPresent(
                        r -> text.add("ledger " + look.figures().fixed(r.ledgerGrams(), 0) + "\u00A0g against bottle "
                                + look.figures().fixed(r.weighedGrams(), 0) + "\u00A0g: "
                                + (r.agrees() ? "agree" : "do not agree")));
        String place = (container.location() + " " + container.contact()).strip();
        text.add(place.isEmpty() ? "place and contact not stated" : place);
        return text.toString();
    }

    private String mass(double grams) {
        return look.figures().fixed(grams, 0) + "\u00A0g";
    }

    private String fill(ContainerState state) {
        OptionalDouble percent = state.fillPercent();
        return "about " + look.figures().fixed(state.litres(), 2) + "\u00A0L"
                + (percent.isPresent() ? " = " + look.figures().fixed(percent.getAsDouble(), 1) + "\u00A0%" : "");
    }

    private void composition(List<Block> blocks, ContainerReview container) {
        blocks.add(new Paragraph(look, "Now: " + parts(container.tally().now())));
        if (!container.proposals().isEmpty()) {
            blocks.add(new Paragraph(look, "With the proposals that fit: " + parts(container.afterProposals())));
        }
    }

    private String parts(ContainerState state) {
        StringJoiner text = new StringJoiner("; ", "", " (% by mass).");
        for (ContainerState.Part part : state.composition(limits.optional(Limit.CONTAINER_TRACE))) {
            text.add(part.substance() + " " + look.figures().fixed(part.massPercent(), 1));
        }
        return state.totalGrams() > 0 ? text.toString() : "contents not known.";
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
                            TableColumn.word("Run"),
                            TableColumn.text("Layer or material"),
                            TableColumn.number("Mass\n(g)"),
                            TableColumn.word("Status"),
                            TableColumn.word("By, on")),
                    rows));
        }
    }

    private TableCell number(double grams) {
        return TableCell.of(look.figures().significant(grams, 4));
    }

    private List<TableCell> row(ContainerAddition addition, String status) {
        Transfer transfer = addition.transfer();
        return List.of(
                TableCell.bold(transfer.id()),
                TableCell.of(transfer.run()),
                TableCell.of(transfer.layers().isEmpty() ? transfer.material() : String.join(" + ", transfer.layers())),
                number(addition.totalGrams()),
                TableCell.of(status),
                TableCell.of((transfer.by() + " "
                                + transfer.date().map(Object::toString).orElse(""))
                        .strip()));
    }
}
