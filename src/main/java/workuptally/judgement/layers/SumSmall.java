package workuptally.judgement.layers;

import java.util.Optional;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.judgement.layers.SumOfLayers.Sum;
import workuptally.model.Figure;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.tally.amounts.Content;

/** R5: all kept layers of the run together stay within the run limit, the largest set apart first until the rest fits. */
final class SumSmall implements LayerCondition {

    @Override
    public Condition judge(LayerEvidence evidence) {
        if (!evidence.layer().endsWorkup()) {
            return new Condition(Criterion.RUN_LIMIT, State.NOT_ASKED, Phrase.of("a liquor is judged alone"));
        }
        double limit = evidence.book().limits().value(Limit.RUN_LIMIT);
        Optional<Condition> met = Optional.empty();
        for (Content content : evidence.wanted()) {
            Optional<Sum> sum = evidence.sums().sum(content.substance());
            if (sum.isPresent() && LayerEvidence.isBounded(content)) {
                boolean apart = evidence.sums().isSetApart(evidence.layer().label(), content.substance());
                Phrase text = Phrase.of(
                        "all kept layers hold up to {} {} = {} of theory; ",
                        Figure.bound(sum.get().allGrams(), "g"),
                        content.substance(),
                        Figure.bound(sum.get().allPercent(), "%"));
                Phrase rest = sum.get().rest().isEmpty()
                        ? Phrase.of("none fits")
                        : Phrase.of(
                                "{} at most {}, limit {}",
                                String.join(" + ", sum.get().rest()),
                                Figure.bound(sum.get().restPercent(), "%"),
                                Figure.digits(limit, 2, "%"));
                Condition judged = new Condition(
                        Criterion.RUN_LIMIT, apart ? State.NOT_MET : State.MET, Phrase.of("{}{}", text, rest));
                if (apart) {
                    return judged;
                }
                met = met.or(() -> Optional.of(judged));
            }
        }
        return met.orElseGet(
                () -> new Condition(Criterion.RUN_LIMIT, State.MISSING, Phrase.of("content of the product")));
    }
}
