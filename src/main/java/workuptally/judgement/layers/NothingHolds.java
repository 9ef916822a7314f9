package workuptally.judgement.layers;

import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Phrase;

/** R11, asked where the book names runs on hold: nothing outside the record holds the layer. */
final class NothingHolds implements LayerCondition {

    @Override
    public Condition judge(LayerEvidence evidence) {
        Limits limits = evidence.book().limits();
        if (limits.heldRuns().contains(evidence.run().run().id())) {
            return new Condition(Criterion.NOT_HELD, State.NOT_MET, Phrase.of("the book holds this run"));
        }
        if (limits.unread().contains(Limit.HOLD_RUNS)) {
            return new Condition(
                    Criterion.NOT_HELD, State.NOT_MET, Phrase.of("not every run that Hold runs names was found"));
        }
        return limits.heldRuns().isEmpty()
                ? new Condition(Criterion.NOT_HELD, State.NOT_ASKED, Phrase.of("the book holds no run"))
                : new Condition(Criterion.NOT_HELD, State.MET, Phrase.of("not among the runs on hold"));
    }
}
