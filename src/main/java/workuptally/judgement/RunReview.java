package workuptally.judgement;

import java.util.List;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.tally.RunTally;

/**
 * Results and judgement of one run.
 *
 * @param tally results
 * @param findings findings of the run, the most urgent first
 * @param hazards hazard notes
 */
public record RunReview(RunTally tally, List<Finding> findings, List<HazardNote> hazards) {
    /** Copies the lists. */
    public RunReview {
        findings = List.copyOf(findings);
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
}
