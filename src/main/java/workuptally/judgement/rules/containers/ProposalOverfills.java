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
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Severity;
import workuptally.reference.Threshold;
import workuptally.tally.amounts.Substances;
import workuptally.tally.containers.ContainerState;

/** The proposal that takes a container over its fill when they are added in order, a container that is over already, and one that is near. */
public final class ProposalOverfills implements ProposalRule {

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
                            ProposalWords.title(fit) + "; the container would reach " + fill(fit.after())
                                    + later(container, fit),
                            FindingList.say("at most %.0f %% of its capacity", limit),
                            source,
                            "Have a new container opened before this transfer."));
            double now = container.tally().now().fillPercent().orElse(0);
            double after = container.afterProposals().fillPercent().orElse(0);
            if (now > limit) {
                findings.add(
                        FindingCode.CONTAINER_OVERFULL,
                        Severity.CHECK,
                        container.tally().container().row().at("Capacity"),
                        container.id() + " stands at " + fill(container.tally().now()),
                        FindingList.say("at most %.0f %% of its capacity", limit),
                        source,
                        "Close the container and have it collected.");
            } else if (after >= substances.value(Threshold.CONTAINER_NEARLY_FULL) && after <= limit && after > now) {
                findings.add(
                        FindingCode.CONTAINER_NEARLY_FULL,
                        Severity.NOTE,
                        container.tally().container().row().at("Capacity"),
                        container.id() + " with the proposals that fit: " + fill(container.afterProposals()) + ", "
                                + contents(book, container.afterProposals()),
                        FindingList.say("at most %.0f %% of its capacity", limit),
                        source,
                        "Plan the collection, and have the next container ready.");
            }
        }
        return findings.list();
    }

    private static String later(ContainerReview container, ProposalFit crossing) {
        List<ProposalFit> later = container.proposals().stream()
                .dropWhile(p -> p != crossing)
                .skip(1)
                .filter(ProposalFit::fits)
                .toList();
        return later.isEmpty()
                ? ""
                : "; with "
                        + later.stream().map(p -> p.addition().transfer().id()).collect(Collectors.joining(", "))
                        + " " + fill(container.afterProposals());
    }

    private static String fill(ContainerState state) {
        return FindingList.say(
                "%.2f L of %.4g L, %.1f %%",
                state.litres(),
                state.capacityLitres().orElse(0),
                state.fillPercent().orElse(0));
    }

    private static String contents(Book book, ContainerState state) {
        return FindingList.say("%.0f g: ", state.totalGrams())
                + state.composition(book.limits().optional(Limit.CONTAINER_TRACE)).stream()
                        .map(p -> p.massPercent() == 0
                                ? p.substance() + " < 0.1 %"
                                : FindingList.say("%s %.1f %%", p.substance(), p.massPercent()))
                        .collect(Collectors.joining(", "));
    }
}
