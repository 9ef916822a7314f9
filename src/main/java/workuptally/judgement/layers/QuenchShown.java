package workuptally.judgement.layers;

import java.util.List;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Step;
import workuptally.model.Step.Operation;

/** R9, asked for a proposed transfer: reactive content shown quenched by the last test, made at or after the last quench. */
final class QuenchShown implements LayerCondition {
    /** Code of the finding that a reactive charge has no test. */
    private static final FindingCode NOT_SHOWN = FindingCode.QUENCH_NOT_SHOWN;

    @Override
    public Condition judge(LayerEvidence evidence) {
        if (!Proposals.isProposed(evidence)) {
            return new Condition(Criterion.QUENCHED, State.NOT_ASKED, Phrase.of("no transfer proposed"));
        }
        List<Step> steps = evidence.run().run().orderedSteps();
        int lastQuench = -1;
        int lastTest = -1;
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).operation().filter(o -> o == Operation.QUENCH).isPresent()) {
                lastQuench = i;
            }
            if (steps.get(i)
                    .quenchTest()
                    .filter(t -> t != Step.QuenchTest.NOT_DONE)
                    .isPresent()) {
                lastTest = i;
            }
        }
        if (lastTest >= 0 && lastTest >= lastQuench) {
            boolean negative = steps.get(lastTest)
                    .quenchTest()
                    .filter(t -> t == Step.QuenchTest.NEGATIVE)
                    .isPresent();
            return negative
                    ? new Condition(Criterion.QUENCHED, State.MET, Phrase.of("quench test negative"))
                    : new Condition(Criterion.QUENCHED, State.NOT_MET, Phrase.of("quench test positive"));
        }
        boolean open = lastQuench >= 0 || evidence.findings().stream().anyMatch(f -> f.code() == NOT_SHOWN);
        return open
                ? new Condition(Criterion.QUENCHED, State.MISSING, Phrase.of("quench test"))
                : new Condition(Criterion.QUENCHED, State.MET, Phrase.of("no quench in this workup"));
    }
}
