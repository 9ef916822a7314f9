package workuptally.judgement.layers;

import java.util.Arrays;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Limit;
import workuptally.model.Phrase;

/** R11, asked where the book names runs on hold: nothing outside the record holds the layer. */
final class NothingHolds implements LayerCondition {

    @Override
    public Condition judge(LayerEvidence evidence) {
        String held = evidence.book().limits().text(Limit.HOLD_RUNS);
        if (held.isBlank()) {
            return new Condition(Criterion.NOT_HELD, State.NOT_ASKED, Phrase.of("the book holds no run"));
        }
        String id = evidence.run().run().id();
        boolean isHeld = Arrays.stream(held.split(";")).map(String::strip).anyMatch(id::equals);
        return isHeld
                ? new Condition(Criterion.NOT_HELD, State.NOT_MET, Phrase.of("the book holds this run"))
                : new Condition(Criterion.NOT_HELD, State.MET, Phrase.of("not among the runs on hold"));
    }
}
