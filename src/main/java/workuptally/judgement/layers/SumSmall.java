package workuptally.judgement.layers;

import java.util.Locale;
import java.util.Optional;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.judgement.layers.SumOfLayers.Sum;
import workuptally.model.Limit;
import workuptally.tally.Content;

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
                        Locale.ROOT,
                        "all kept layers hold up to %.3g g %s = %.2g %% of theory; ",
                        sum.get().allGrams(),
                        content.substance(),
                        sum.get().allPercent());
                String rest = sum.get().rest().isEmpty()
                        ? "none fits"
                        : String.format(
                                Locale.ROOT,
                                "%s at most %.2g %%, limit %.2g %%",
                                String.join(" + ", sum.get().rest()),
                                sum.get().restPercent(),
                                limit);
                return new Condition(ID, TITLE, apart ? State.NOT_MET : State.MET, text + rest);
            }
        }
        return new Condition(ID, TITLE, State.MISSING, "content of the product");
    }
}
