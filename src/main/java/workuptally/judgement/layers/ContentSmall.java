package workuptally.judgement.layers;

import java.util.Optional;
import workuptally.judgement.layers.LayerDecision.AtMost;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Figure;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.tally.amounts.Content;

/**
 * R4: what the layer holds at most is within the layer limit, m with its one-sided 95 % reach, non-detects at their limit. The guard band
 * follows the Eurachem/CITAC guide on compliance with limits.
 */
final class ContentSmall implements LayerCondition {

    @Override
    public Condition judge(LayerEvidence evidence) {
        double limit = evidence.book().limits().value(Limit.LAYER_LIMIT);
        return atMost(evidence)
                .map(most -> new Condition(
                        Criterion.LAYER_LIMIT,
                        most.percentOfTheory() <= limit ? State.MET : State.NOT_MET,
                        Phrase.of(
                                "at most {} {} = {} of theory, limit {}",
                                Figure.bound(most.grams(), "g"),
                                most.product(),
                                Figure.bound(most.percentOfTheory(), "%"),
                                Figure.digits(limit, 2, "%"))))
                .orElse(new Condition(
                        Criterion.LAYER_LIMIT, State.MISSING, Phrase.of("theory or content of the product")));
    }

    /** The wanted product of which the layer may hold the largest share of theory; the first of equal ones. */
    static Optional<AtMost> atMost(LayerEvidence evidence) {
        Optional<AtMost> worst = Optional.empty();
        for (Content content : evidence.wanted()) {
            Optional<Double> theory = LayerEvidence.theoryGrams(evidence.run(), content.substance());
            if (theory.isEmpty() || !LayerEvidence.isBounded(content)) {
                continue;
            }
            double grams = SumOfLayers.guarded(evidence.layer(), content.substance());
            double percent = LayerEvidence.guardedPercentOfTheory(evidence.run(), content, grams);
            if (worst.isEmpty() || percent > worst.get().percentOfTheory()) {
                worst = Optional.of(new AtMost(content.substance(), grams, percent));
            }
        }
        return worst;
    }
}
