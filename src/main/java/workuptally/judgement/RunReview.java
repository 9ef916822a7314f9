package workuptally.judgement;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.tally.RunTally;

/**
 * Results and judgement of one run.
 *
 * @param tally results
 * @param findings findings of the run, the most urgent first
 * @param decisions decisions about its kept layers, in order of the steps
 * @param hazards hazard notes
 */
public record RunReview(
        RunTally tally, List<Finding> findings, List<LayerDecision> decisions, List<HazardNote> hazards) {
    /** Copies the lists. */
    public RunReview {
        findings = List.copyOf(findings);
        decisions = List.copyOf(decisions);
        hazards = List.copyOf(hazards);
    }

    /** Run id. */
    public String id() {
        return tally.run().id();
    }

    /** True when the run has a finding of that severity. */
    public boolean has(Severity severity) {
        return findings.stream().anyMatch(f -> f.severity() == severity);
    }

    /** The decision about a layer, if there is one. */
    public Optional<LayerDecision> decision(String layer) {
        return decisions.stream().filter(d -> d.layer().equals(layer)).findFirst();
    }
}
