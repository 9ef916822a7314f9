package workuptally.judgement.rules.containers;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerState;

/** The proposal that takes a container over its fill when they are added in order, a container that is over already, and one that is near. */
public final class ProposalOverfills implements ProposalRule {

    /** Per cent of its capacity. */
    private static final double WHOLE = 100;

    private final Substances substances;

    /** With the reference data in force. */
    public ProposalOverfills(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CONTAINER_OVERFULL, FindingCode.CONTAINER_NEARLY_FULL);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        double limit = book.limits().value(Limit.CONTAINER_FILL);
        String source = "Container fill, " + book.limits().origin(Limit.CONTAINER_FILL);
        for (ContainerReview container : containers) {
            container.proposals().stream()
                    .filter(ProposalFit::crossesFill)
                    .filter(ProposalFit::fits)
                    .forEach(fit -> findings.add(
                            FindingCode.CONTAINER_OVERFULL,
                            Severity.STOP,
                            fit.addition().transfer().row().at("Amount"),
                            Phrase.of(
                                    "{}; the container would reach {}{}",
                                    ProposalWords.title(fit),
                                    fill(fit.after()),
                                    later(container, fit)),
                            Phrase.of("at most {} of its capacity", Figure.decimals(limit, 0, "%")),
                            source,
                            Phrase.of("Have a new container opened before this transfer.")));
            double now = container.tally().now().fillPercent().orElse(0);
            ContainerState fitting = container.tally().now();
            for (ProposalFit fit : container.proposals()) {
                fitting = ProposalWords.isUnopposed(fit, decisions) ? fitting.plus(fit.addition()) : fitting;
            }
            double after = fitting.fillPercent().orElse(0);
            if (now > limit) {
                findings.add(
                        FindingCode.CONTAINER_OVERFULL,
                        now > WHOLE ? Severity.HOLD : Severity.CHECK,
                        container.tally().container().row().at("Capacity"),
                        Phrase.of(
                                "{} stands at {}",
                                container.id(),
                                fill(container.tally().now())),
                        Phrase.of("at most {} of its capacity", Figure.decimals(limit, 0, "%")),
                        source,
                        now > WHOLE
                                ? Phrase.of(
                                        "It cannot hold more than its capacity: look at it, and correct what is wrong.")
                                : Phrase.of("Close the container and have it collected."));
            } else if (after >= substances.value(Threshold.CONTAINER_NEARLY_FULL) && after <= limit && after > now) {
                findings.add(
                        FindingCode.CONTAINER_NEARLY_FULL,
                        Severity.NOTE,
                        container.tally().container().row().at("Capacity"),
                        Phrase.of(
                                "{} with the proposals that fit: {}, {}",
                                container.id(),
                                fill(fitting),
                                contents(book, fitting)),
                        Phrase.of("at most {} of its capacity", Figure.decimals(limit, 0, "%")),
                        source,
                        Phrase.of("Plan the collection, and have the next container ready."));
            }
        }
        return findings.list();
    }

    private static Phrase later(ContainerReview container, ProposalFit crossing) {
        List<ProposalFit> later = container.proposals().stream()
                .dropWhile(p -> p != crossing)
                .skip(1)
                .filter(ProposalFit::fits)
                .toList();
        return later.isEmpty()
                ? Phrase.NONE
                : Phrase.of(
                        "; with {} {}",
                        later.stream().map(p -> p.addition().transfer().id()).collect(Collectors.joining(", ")),
                        fill(container.afterProposals()));
    }

    private static Phrase fill(ContainerState state) {
        return Phrase.of(
                "{} of {}, {}",
                Figure.decimals(state.litres(), 2, "L"),
                Figure.digits(state.capacityLitres().orElse(0), 4, "L"),
                Figure.decimals(state.fillPercent().orElse(0), 1, "%"));
    }

    private static Phrase contents(Book book, ContainerState state) {
        return Phrase.of(
                "{}: {}",
                Figure.decimals(state.totalGrams(), 0, "g"),
                state.composition(book.limits().optional(Limit.CONTAINER_TRACE)).stream()
                        .map(p -> p.massPercent() == 0
                                ? Phrase.of("{} < 0.1 %", p.substance())
                                : Phrase.of("{} {}", p.substance(), Figure.decimals(p.massPercent(), 1, "%")))
                        .collect(Phrase.joining(", ")));
    }
}
