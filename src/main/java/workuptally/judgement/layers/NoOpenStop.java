package workuptally.judgement.layers;

import java.util.List;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Finding;
import workuptally.model.Severity;

/** R7: no open stop on the run and no unread entry about the layer; until it is settled the layer may be the evidence. */
final class NoOpenStop implements LayerCondition {
    private static final String ID = "R7";
    private static final String TITLE = "no open stop on the run";

    @Override
    public Condition judge(LayerEvidence evidence) {
        List<String> stops = evidence.findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .map(Finding::code)
                .distinct()
                .toList();
        if (!stops.isEmpty()) {
            return new Condition(ID, TITLE, State.NOT_MET, "open: " + String.join(", ", stops));
        }
        List<String> unread =
                UnreadEntries.of(evidence.run().run(), evidence.layer().label(), evidence.findings());
        return unread.isEmpty()
                ? new Condition(ID, TITLE, State.MET, "no stop on record")
                : new Condition(ID, TITLE, State.NOT_MET, "not read: " + String.join(", ", unread));
    }
}
