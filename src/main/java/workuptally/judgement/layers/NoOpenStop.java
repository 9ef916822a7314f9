package workuptally.judgement.layers;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.tally.layers.Meeting;

/** R7: no open stop on the run, until it is settled the layer may be the evidence; and nothing in the layer that must not have met. */
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
        Optional<Meeting> met = evidence
                .run()
                .evidence()
                .meetings()
                .carriedBy(evidence.layer().label())
                .stream()
                .filter(Meeting::holdsItsPortions)
                .findFirst();
        if (met.isPresent()) {
            return new Condition(
                    ID,
                    TITLE,
                    State.NOT_MET,
                    String.join(" met ", met.get().with()) + " in step "
                            + met.get().place() + ": " + met.get().consequence());
        }
        return stops.isEmpty()
                ? new Condition(ID, TITLE, State.MET, "no stop on record")
                : new Condition(ID, TITLE, State.NOT_MET, "open: " + String.join(", ", stops));
    }
}
