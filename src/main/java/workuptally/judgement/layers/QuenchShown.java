package workuptally.judgement.layers;

import java.util.List;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Step;
import workuptally.model.Step.Operation;

/** R9, asked for a proposed transfer: reactive content shown quenched. */
final class QuenchShown implements LayerCondition {
    private static final String ID = "R9";
    private static final String TITLE = "reactive content shown quenched";

    @Override
    public Condition judge(LayerEvidence evidence) {
        if (!Proposals.isProposed(evidence)) {
            return new Condition(ID, TITLE, State.NOT_ASKED, "no transfer proposed");
        }
        List<Step> quenches = evidence.run().run().steps().stream()
                .filter(s -> s.operation().filter(o -> o == Operation.QUENCH).isPresent())
                .toList();
        if (quenches.isEmpty()) {
            return new Condition(ID, TITLE, State.MET, "no quench in this workup");
        }
        boolean positive = quenches.stream()
                .anyMatch(s -> s.quenchTest()
                        .filter(t -> t == Step.QuenchTest.POSITIVE)
                        .isPresent());
        boolean negative = quenches.stream()
                .anyMatch(s -> s.quenchTest()
                        .filter(t -> t == Step.QuenchTest.NEGATIVE)
                        .isPresent());
        if (positive) {
            return new Condition(ID, TITLE, State.NOT_MET, "quench test positive");
        }
        return negative
                ? new Condition(ID, TITLE, State.MET, "quench test negative")
                : new Condition(ID, TITLE, State.MISSING, "quench test");
    }
}
