package workuptally.judgement.rules.containers;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import workuptally.judgement.containers.ContainerReview;
import workuptally.judgement.containers.ProposalFit;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.ProposalRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.IngredientAccount;

/** A proposal whose evidence is complete, of an aqueous layer with dissolved solvents: the label of the container must name them. */
public final class ProposalLabel implements ProposalRule {

    private final Substances substances;

    public ProposalLabel(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.PROPOSAL_LABEL);
    }

    @Override
    public List<Finding> judge(
            Book book, List<ContainerReview> containers, Map<String, List<LayerDecision>> decisions) {
        FindingList findings = new FindingList("");
        for (ContainerReview container : containers) {
            for (ProposalFit fit : container.proposals()) {
                List<LayerDecision> ofLayers =
                        ProposalWords.decisions(fit.addition().transfer(), decisions);
                boolean complete = !ofLayers.isEmpty()
                        && ofLayers.stream().allMatch(d -> d.outcome() == Outcome.EVIDENCE_COMPLETE);
                Phrase dissolved = dissolved(fit);
                OptionalDouble full =
                        container.tally().now().plus(fit.addition()).fillPercent();
                if (complete && fit.fits() && !fit.isOver() && full.isPresent() && !dissolved.isEmpty()) {
                    findings.add(
                            FindingCode.PROPOSAL_LABEL,
                            Severity.NOTE,
                            fit.addition().transfer().row().at("Layer"),
                            Phrase.of(
                                    "{}; evidence complete ({}); with it the container would be {} full",
                                    ProposalWords.title(fit),
                                    ofLayers.stream()
                                            .map(d -> Phrase.of("{}: {}", d.layer(), d.reason()))
                                            .collect(Phrase.joining("; ")),
                                    Figure.decimals(full.getAsDouble(), 1, "%")),
                            Phrase.of("every component on the label by its full name, not 'aqueous' alone"),
                            FindingList.PRACTICE,
                            Phrase.of("Should the responsible person decide for it, add to the label: {}.", dissolved));
                }
            }
        }
        return findings.list();
    }

    private Phrase dissolved(ProposalFit fit) {
        double total = fit.addition().totalGrams();
        boolean aqueous = fit.addition().grams().getOrDefault(IngredientAccount.WATER, 0.0) > total / 2;
        return fit.addition().grams().entrySet().stream()
                .filter(e ->
                        aqueous && substances.material(e.getKey()).solvent().isPresent())
                .filter(e -> !e.getKey().equals(IngredientAccount.WATER)
                        && 100 * e.getValue() / total >= substances.value(Threshold.LABEL_LEAST_SHARE))
                .map(e -> Phrase.of("{} {}", e.getKey(), Figure.decimals(100 * e.getValue() / total, 1, "%")))
                .collect(Phrase.joining(", "));
    }
}
