package workuptally.report.view.firstpage;

import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import workuptally.judgement.GraveChecks;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.totals.CarriedOn;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.report.view.lines.Recovery;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Words;

/**
 * One of the four figures that a review opens with.
 *
 * @param label what it is
 * @param value the figure, with its unit
 * @param detail what stands behind it, in a few words
 */
public record TopFigure(String label, String value, String detail) {
    private static final String NONE = "–";

    /** A share that rounds to less is not told. */
    private static final double LEAST_TOLD_PERCENT = 0.5;

    /** The four figures of a review: what waits for a person, what is settled, what was recovered, what it cost in solvent. */
    public static List<TopFigure> of(Review review, ReadableNumbers numbers) {
        return List.of(needsYou(review), complete(review), recovered(review, numbers), solvent(review, numbers));
    }

    private static TopFigure needsYou(Review review) {
        long runs = review.runs().stream().filter(TopFigure::hasStopOrHold).count();
        long stops = count(review, Severity.STOP);
        long holds = count(review, Severity.HOLD);
        long due = review.containers().stream()
                .flatMap(c -> c.tally().age().stream())
                .filter(age -> age.overdue() || age.dueNow())
                .count();
        int grave = GraveChecks.of(review).size();
        String checks = grave > 0
                ? Words.count(grave, "grave check")
                : Words.count(count(review, Severity.CHECK), "check") + " before reporting";
        if (stops + holds == 0) {
            return new TopFigure(
                    "Needs you today",
                    due > 0 ? Words.count(due, "container") : grave > 0 ? Words.count(grave, "check") : "0 runs",
                    (due > 0 ? "due today or overdue; " : "")
                            + "no stop, no hold; "
                            + (due == 0 && grave > 0 ? "to settle before reporting" : checks));
        }
        StringJoiner detail = new StringJoiner(", ");
        detail.add(Words.count(stops, "stop"));
        detail.add(Words.count(holds, "hold"));
        if (grave > 0) {
            detail.add(checks);
        }
        // what concerns no run, such as a container, needs somebody too
        boolean ofBook = runs == 0;
        return new TopFigure(
                "Needs you today",
                ofBook
                        ? (stops > 0 ? Words.count(stops, "stop") : Words.count(holds, "hold"))
                        : Words.count(runs, "run"),
                (ofBook
                                ? "about containers or the book: "
                                : "of " + review.runs().size() + ": ")
                        + detail
                        + (due == 0 ? "" : "; " + Words.count(due, "container").replace(' ', '\u00A0') + " due"));
    }

    private static boolean hasStopOrHold(RunReview run) {
        return run.has(Severity.STOP) || run.has(Severity.HOLD);
    }

    private static long count(Review review, Severity severity) {
        return review.findings().stream().filter(f -> f.severity() == severity).count();
    }

    private static TopFigure complete(Review review) {
        List<LayerDecision> decisions =
                review.runs().stream().flatMap(r -> r.decisions().stream()).toList();
        List<LayerDecision> kept = decisions.stream().filter(d -> !d.isGone()).toList();
        long complete = kept.stream()
                .filter(d -> d.outcome() == LayerDecision.Outcome.EVIDENCE_COMPLETE)
                .count();
        int gone = decisions.size() - kept.size();
        return new TopFigure(
                "Evidence complete",
                kept.isEmpty() ? NONE : Words.count(complete, "layer"),
                (kept.isEmpty() ? "no kept layer" : "of " + kept.size() + " kept")
                        + (gone == 0 ? "" : ", " + gone + " gone")
                        + (kept.isEmpty() ? "" : "; a person decides"));
    }

    private static TopFigure recovered(Review review, ReadableNumbers numbers) {
        double theory = 0;
        double isolated = 0;
        double kept = 0;
        double all = 0;
        int notAssayed = 0;
        boolean bound = false;
        int above = 0;
        double carried = 0;
        CarriedOn carriedOn =
                CarriedOn.of(review.runs().stream().map(RunReview::tally).toList());
        for (Recovery run : Recovery.of(review)) {
            kept += Math.max(0, run.keptGrams() - carriedOn.inLiquorsGrams(run.run()));
            all += run.theoryGrams();
            notAssayed += run.notAssayed();
            if (run.aboveTheory()) {
                above++;
            } else if (run.isolatedGrams().isPresent() || run.atMostGrams() > 0) {
                double grams = run.isolatedGrams().orElse(0.0) + run.atMostGrams();
                isolated += grams;
                carried += Math.min(grams, carriedOn.grams(run.run()));
                theory += run.theoryGrams();
                bound |= run.atMostGrams() > 0;
            }
        }
        if (isOnlyPlanned(review)) {
            return new TopFigure("Product recovered", NONE, "nothing isolated yet: all runs are planned");
        }
        if (all == 0) {
            return new TopFigure("Product recovered", NONE, "no theory could be computed");
        }
        String inLayers = review.recordsWorkup() ? inLayers(kept, notAssayed, numbers) : "layers not recorded";
        if (theory == 0) {
            return new TopFigure("Product recovered", NONE, "no yield yet; " + inLayers);
        }
        // no share for the layers: those of runs that have no lot yet would stand on another theory
        String most = bound ? "≤\u00A0" : "";
        String detail = (carried == 0 ? "" : "not carried on in this book; ")
                + ofTheory(review.period(), numbers)
                        .orElse(most + numbers.significant(100 * isolated / theory, 3)
                                + "\u00A0% of theory where isolated")
                + "; "
                + (above == 0 ? "" : Words.count(above, "run") + " above 100\u00A0% left out; ") + inLayers;
        return new TopFigure(
                "Product recovered", most + numbers.significant(isolated - carried, 3) + "\u00A0g", detail);
    }

    /** The same share as on the terminal and beside the yields: over the yields that can be stated, weighted by moles. */
    private static Optional<String> ofTheory(PeriodTotals period, ReadableNumbers numbers) {
        return period.amountWeightedYieldPercent().isEmpty()
                ? Optional.empty()
                : Optional.of(numbers.fixed(period.amountWeightedYieldPercent().getAsDouble(), 1)
                        + "\u00A0% of theory over " + Words.count(period.yieldsStated(), "yield"));
    }

    private static boolean isOnlyPlanned(Review review) {
        return !review.runs().isEmpty()
                && review.runs().stream().allMatch(r -> r.tally().run().status() == Run.Status.PLANNED);
    }

    /** What was found in layers; what nobody looked for is not nothing. */
    private static String inLayers(double keptGrams, int notAssayed, ReadableNumbers numbers) {
        if (keptGrams == 0 && notAssayed > 0) {
            return "layers not assayed";
        }
        return "in layers " + (notAssayed > 0 ? "≥\u00A0" : "") + numbers.significant(keptGrams, 2) + "\u00A0g";
    }

    private static TopFigure solvent(Review review, ReadableNumbers numbers) {
        PeriodTotals period = review.period();
        if (period.solventInGrams() == 0) {
            return new TopFigure(
                    "Solvent in",
                    NONE,
                    period.solventInPurificationsGrams() > 0
                            ? "none up to the crude" + inPurifications(period, numbers)
                            : period.isSolventLeast()
                                    ? "no amount of a solvent is entered"
                                    : isOnlyPlanned(review)
                                            ? "nothing used yet: all runs are planned"
                                            : "no solvent is recorded");
        }
        String distillates = period.solventInDistillatesGrams() == 0
                ? ""
                : ", " + numbers.fixed(period.solventInDistillatesPercent(), 0) + "\u00A0% in other distillates";
        return new TopFigure(
                "Solvent in",
                (period.isSolventLeast() ? "≥\u00A0" : "") + numbers.significant(period.solventInLitres(), 3)
                        + "\u00A0L",
                (review.recordsWorkup()
                                ? numbers.fixed(period.solventRecoveredPercent(), 0) + "\u00A0% to re-use" + distillates
                                        + ", " + numbers.fixed(period.solventNotFoundPercent(), 0) + "\u00A0% not found"
                                        + (elsewherePercent(period) >= LEAST_TOLD_PERCENT ? ", rest in layers" : "")
                                : "what became of it is not recorded")
                        + inPurifications(period, numbers)
                        + forWaste(period, numbers));
    }

    private static double elsewherePercent(PeriodTotals period) {
        return 100
                - period.solventRecoveredPercent()
                - period.solventInDistillatesPercent()
                - period.solventNotFoundPercent();
    }

    /** Solvent of recrystallisations and columns stands in a balance of its own, and is often the most of all. */
    private static String inPurifications(PeriodTotals period, ReadableNumbers numbers) {
        double grams = period.solventInPurificationsGrams();
        return grams == 0 ? "" : "; +\u00A0" + numbers.mass(grams) + " in\u00A0purifications";
    }

    /** Mass of what has to be got rid of one day; a least one where an amount is not recorded. */
    private static String forWaste(PeriodTotals period, ReadableNumbers numbers) {
        double grams = period.waste().stream()
                .mapToDouble(PeriodTotals.StreamTotal::massGrams)
                .sum();
        boolean least = period.waste().stream().anyMatch(s -> s.withoutMass() > 0);
        return grams == 0
                ? ""
                : "; waste streams " + (least ? "≥\u00A0" : "") + numbers.significant(grams / 1000, 3) + "\u00A0kg";
    }
}
