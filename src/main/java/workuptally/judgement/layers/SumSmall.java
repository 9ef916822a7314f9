package workuptally.judgement.layers;

import java.util.Optional;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.judgement.layers.SumOfLayers.Sum;
import workuptally.model.Limit;
import workuptally.tally.amounts.Content;

/** R5: all kept layers of the run together stay within the run limit, the largest set apart first until the rest fits. */
final class SumSmall implements LayerCondition {
    private static final String ID = "R5";
    private static final String TITLE = "kept layers together within the run limit";

    @Override
    public Condition judge(LayerEvidence evidence) {
        if (!evidence.layer().endsWorkup()) {
            return new Condition(ID, TITLE, State.NOT_ASKED, "a liquor is judged alone");
        }
        double limit = evidence.book().limits().value(Limit.RUN_LIMIT);
        for (Content content : evidence.wanted()) {
            Optional<Sum> sum = evidence.sums().sum(content.substance());
            if (sum.isPresent() && content.upperBoundGrams().isPresent()) {
                boolean apart = evidence.sums().isSetApart(evidence.layer().label());
                String text = String.format(
                        "all kept layers hold up to %s g %s = %s %% of theory; ",
                        Figures.of(sum.get().allGrams(), 3),
                        content.substance(),
                        Figures.of(sum.get().allPercent(), 2));
                String rest = sum.get().rest().isEmpty()
                        ? "none fits"
                        : String.format(
                                "%s at most %s %%, limit %s %%",
                                String.join(" + ", sum.get().rest()),
                                Figures.of(sum.get().restPercent(), 2),
                                Figures.of(limit, 2));
                return new Condition(ID, TITLE, apart ? State.NOT_MET : State.MET, text + rest);
            }
        }
        return new Condition(ID, TITLE, State.MISSING, "content of the product");
    }
}
