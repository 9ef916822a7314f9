package workuptally.report.pdf;

import workuptally.judgement.RunReview;
import workuptally.report.pdf.layout.Look;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.tally.bench.ExtractionSplit;
import workuptally.tally.bench.Plan;

/** What an extraction leaves behind as planned and in more portions, and whether those fit the funnel. */
final class SplitAdvice {
    private final Look look;
    private final RunReview run;

    SplitAdvice(Look look, RunReview run) {
        this.look = look;
        this.run = run;
    }

    String of(Plan.PlannedStep planned, ExtractionSplit split) {
        return split(split) + inFunnel(planned, split);
    }

    private String split(ExtractionSplit split) {
        ReadableNumbers figures = look.figures();
        String planned = "By " + split.origin() + ": about " + figures.significant(split.leftAsPlannedPercent(), 2)
                + "\u00A0% of " + split.product() + " stays behind ("
                + figures.significant(split.leastLeftAsPlannedPercent(), 2) + " to "
                + figures.significant(split.mostLeftAsPlannedPercent(), 2) + "\u00A0%)";
        return split.bestPortions() > split.plannedPortions()
                ? planned + ", in " + split.bestPortions() + " portions of "
                        + figures.significant(split.totalMillilitres() / split.bestPortions(), 2)
                        + "\u00A0mL about " + figures.significant(split.leftAtBestPercent(), 2) + "\u00A0%"
                : planned;
    }

    /** Smaller portions need less room: what is said of the funnel holds for the portions as planned, and would contradict this. */
    private String inFunnel(Plan.PlannedStep planned, ExtractionSplit split) {
        if (split.bestPortions() <= split.plannedPortions()) {
            return "";
        }
        double less =
                split.totalMillilitres() / split.plannedPortions() - split.totalMillilitres() / split.bestPortions();
        return run.tally().contacts().stream()
                .filter(c -> c.step() == planned.step() && c.loadsNeeded() > c.loads())
                .findFirst()
                .map(c -> {
                    double percent = 100 * (c.volumeMillilitres() - less) / c.funnelMillilitres();
                    long loads = (long) Math.ceil(percent / c.fillLimitPercent());
                    return "; each then " + (loads == 1 ? "in one load" : "in " + loads + " loads");
                })
                .orElse("");
    }
}
