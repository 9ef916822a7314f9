package workuptally.judgement;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.measurements.NextTest;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.suspects.RunSuspects;

/**
 * Results and judgement of one run.
 *
 * @param tally results
 * @param findings findings of the run, the most urgent first
 * @param decisions decisions about its kept layers, in order of the steps
 * @param hazards hazard notes
 * @param suspects what its entries say against each other, and the cells to look at again
 * @param nextTests tests that would settle its open layers, in the order in which to make them; none while a stop is open
 * @param materials what the names of its materials mean, in the order in which the run meets them
 */
public record RunReview(
        RunTally tally,
        List<Finding> findings,
        List<LayerDecision> decisions,
        List<HazardNote> hazards,
        RunSuspects suspects,
        List<NextTest> nextTests,
        List<RunMaterial> materials) {
    /** Copies the lists. */
    public RunReview {
        materials = List.copyOf(materials);
        findings = List.copyOf(findings);
        decisions = List.copyOf(decisions);
        hazards = List.copyOf(hazards);
        nextTests = List.copyOf(nextTests);
    }

    /** A review without materials. */
    public RunReview(RunTally tally, List<Finding> findings, List<LayerDecision> decisions, List<HazardNote> hazards) {
        this(tally, findings, decisions, hazards, RunSuspects.NONE, List.of(), List.of());
    }

    /** A review of a run whose entries agree and whose layers are settled. */
    public RunReview(
            RunTally tally,
            List<Finding> findings,
            List<LayerDecision> decisions,
            List<HazardNote> hazards,
            List<RunMaterial> materials) {
        this(tally, findings, decisions, hazards, RunSuspects.NONE, List.of(), materials);
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
