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
import workuptally.tally.HeldOnCake;

/** A proposal for a drying cake that may hold more product than a layer may, or for a solid that nobody assayed, while the balance of its run is open. */
public final class ProposalOfSolid implements ProposalRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PROPOSAL_EVIDENCE_OPEN);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        double limitPercent = book.limits().value(Limit.LAYER_LIMIT);
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            for (ProposalFit fit : container.proposals()) {
                List<HeldOnCake> holding = fit.cakes().stream()
                        .filter(cake -> cake.highPercent() > limitPercent)
                        .toList();
                if (!holding.isEmpty()) {
                    add(findings, fit, holding, limitPercent);
                }
                if (!fit.unassayedSolids().isEmpty()) {
                    unassayed(findings, fit, String.join(", ", fit.unassayedSolids()));
                }
            }
        }
        return findings.list();
    }

    private static void add(FindingList findings, ProposalFit fit, List<HeldOnCake> cakes, double limitPercent) {
        findings.add(
                FindingCode.PROPOSAL_EVIDENCE_OPEN,
                Severity.HOLD,
                fit.addition().transfer().row().at("Layer"),
                Phrase.of(
                        "{}; {}",
                        ProposalWords.title(fit),
                        cakes.stream()
                                .map(cake -> Phrase.of(
                                        "cake {} may hold up to {} of {}, {} of theory (estimate), and the balance leaves room for it",
                                        cake.cake(),
                                        Figure.digits(cake.highGrams(), 2, "g"),
                                        cake.product(),
                                        Figure.decimals(cake.highPercent(), 1, "%")))
                                .collect(Phrase.joining("; "))),
                Phrase.of("at most {} of theory on it", Figure.brief(limitPercent, "%")),
                FindingList.PRACTICE,
                Phrase.of(
                        "Rinse {} with a little solvent and weigh what that brings.",
                        cakes.stream().map(HeldOnCake::cake).collect(Collectors.joining(", "))));
    }

    private static void unassayed(FindingList findings, ProposalFit fit, String labels) {
        findings.add(
                FindingCode.PROPOSAL_EVIDENCE_OPEN,
                Severity.HOLD,
                fit.addition().transfer().row().at("Layer"),
                Phrase.of(
                        "{}; nobody assayed {}, and the balance of its run does not close",
                        ProposalWords.title(fit),
                        labels),
                Phrase.of("a solid that was assayed, or a balance that closes"),
                FindingList.PRACTICE,
                Phrase.of("Wash {} with a solvent of the product and weigh or assay what that brings.", labels));
    }
}
