package workuptally.judgement.rules;

import java.util.List;
import workuptally.judgement.layers.Departure;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Subject;
import workuptally.tally.RunTally;

/** Layers that were let go before their evidence was complete: who reads that they are to be kept must know that they are not there. */
final class LeftEarly {
    private LeftEarly() {}

    static void add(RunTally tally, List<LayerDecision> decisions, FindingList findings) {
        for (LayerDecision decision : decisions) {
            if (decision.outcome() != Outcome.EVIDENCE_COMPLETE) {
                decision.departure().ifPresent(departure -> add(tally, decision, departure, findings));
            }
        }
    }

    private static void add(RunTally tally, LayerDecision decision, Departure departure, FindingList findings) {
        findings.add(
                FindingCode.LAYER_LEFT_EARLY,
                Severity.HOLD,
                Subject.ofRun(tally.run().id()).withLayers(List.of(decision.layer())),
                HeldLayers.place(tally, decision.layer()),
                Phrase.of(
                        departure.whole()
                                ? "layer {} has left ({}) before its evidence was complete: {}"
                                : "a part of layer {} has left ({}) before its evidence was complete: {}",
                        decision.layer(),
                        departure.how(),
                        decision.reason()),
                Phrase.of("every condition on the evidence met before a layer leaves the bench"),
                "conditions R1 to R8, R11, R12",
                departure.containers().isEmpty()
                        ? Phrase.of(
                                "Find out where it is and enter the transfer, or the step or run that took it; assay a sample of it if one was kept, else its content stays open.")
                        : Phrase.of(
                                "Leave {} as it is and tell who is responsible for it; assay a sample of the layer if one was kept, else its content stays open.",
                                String.join(", ", departure.containers())));
    }
}
