package workuptally.judgement.rules.layers;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Substances;
import workuptally.tally.bench.ExtractionSplit;
import workuptally.tally.bench.Plan;

/** The volume of a planned extraction would take out clearly more in more and smaller portions: a note. */
public final class ExtractionUndivided implements RunRule {

    private final Substances substances;

    /** With the reference data in force. */
    public ExtractionUndivided(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.EXTRACTION_SPLIT);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Plan.PlannedStep planned : tally.plan().map(Plan::steps).orElse(List.of())) {
            for (ExtractionSplit split : planned.splits()) {
                double gainPercent = split.leftAsPlannedPercent() - split.leftAtBestPercent();
                if (gainPercent >= substances.value(Threshold.SPLIT_GAIN)) {
                    findings.add(
                            FindingCode.EXTRACTION_SPLIT,
                            Severity.NOTE,
                            planned.step().row().at("Portions"),
                            seen(planned.step(), split),
                            Phrase.of(
                                    "{} portions of {}: about {} left",
                                    split.bestPortions(),
                                    Figure.decimals(split.totalMillilitres() / split.bestPortions(), 0, "mL"),
                                    Figure.digits(split.leftAtBestPercent(), 2, "%")),
                            split.origin() + ", equal portions at equilibrium",
                            Phrase.of(
                                    "Divide the volume, or plan another extraction; an assay of both layers gives the true ratio."));
                }
            }
        }
        return findings.list();
    }

    private static Phrase seen(Step step, ExtractionSplit split) {
        return Phrase.of(
                "step {} ({}): {} in {} leaves about {} of {} behind ({} to {} as the ratio is uncertain)",
                step.number(),
                step.added().material(),
                Figure.decimals(split.totalMillilitres(), 0, "mL"),
                split.plannedPortions() == 1 ? "one portion" : split.plannedPortions() + " portions",
                Figure.digits(split.leftAsPlannedPercent(), 2, "%"),
                split.product(),
                Figure.digits(split.leastLeftAsPlannedPercent(), 2, ""),
                Figure.digits(split.mostLeftAsPlannedPercent(), 2, "%"));
    }
}
