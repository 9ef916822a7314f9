package workuptally.tally.balance;

import java.util.List;
import workuptally.measure.MeasuredValue;
import workuptally.model.Figure;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Phrase;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.balance.Closure.Verdict;

/**
 * What a closure B with expanded uncertainty U says.
 *
 * <p>Over where B − 1 &gt; U or where it is beyond what any uncertainty excuses, open where 1 − B &gt; U. It closes where |1 − B| ≤ U and U is no wider than the resolution that this takes: a
 * balance of 92 ± 9 % is compatible with 100 % and says nothing. It cannot be decided where readings do not agree, a row was left out, where U is wider than the
 * limit, where a layer that may hold product has neither assay nor bound, and, unless it is open all the same, where a layer is bounded by
 * nothing but this balance or a lot is known as an upper bound only, since B is then an upper bound as well. Nor is a gap called open where no
 * figure bounds what can fill it.
 */
final class VerdictOnClosure {
    private final Limits limits;

    VerdictOnClosure(Limits limits) {
        this.limits = limits;
    }

    /**
     * Judges a closure.
     *
     * @param percent B, %
     * @param expanded U(B), %
     * @param doubts what stands against a verdict
     */
    Result judge(MeasuredValue percent, double expanded, Doubts doubts) {
        double unaccounted = 100 - percent.value();
        if (!doubts.disputed().isEmpty()) {
            return undecided(Phrase.of("readings do not agree in {}", String.join(", ", doubts.disputed())));
        }
        boolean over = -unaccounted > expanded || percent.value() > ProductYield.MOST_PERCENT;
        if (over && doubts.upperBounds().isEmpty()) {
            return new Result(Verdict.OVER, Phrase.NONE);
        }
        if (!doubts.leftOut().isEmpty()) {
            return undecided(Phrase.of("row left out: {}", String.join(", ", doubts.leftOut())));
        }
        if (!doubts.unbounded().isEmpty()) {
            return undecided(Phrase.of("neither assay nor bound of {}", String.join(", ", doubts.unbounded())));
        }
        if (expanded > limits.value(Limit.CLOSURE_WIDTH)) {
            return tooCoarse(percent, expanded, Limit.CLOSURE_WIDTH);
        }
        if (unaccounted > expanded) {
            return doubts.unknowns().isEmpty()
                    ? new Result(Verdict.OPEN, Phrase.NONE)
                    : undecided(Phrase.of("nothing bounds what is in {}", String.join(", ", doubts.unknowns())));
        }
        if (!doubts.upperBounds().isEmpty()) {
            return undecided(
                    Phrase.of("an upper bound, as is the content of {}", String.join(", ", doubts.upperBounds())));
        }
        if (!doubts.boundedByTheBalance().isEmpty()) {
            return undecided(Phrase.of("not assayed: {}", String.join(", ", doubts.boundedByTheBalance())));
        }
        if (expanded > limits.value(Limit.CLOSURE_RESOLUTION)) {
            return tooCoarse(percent, expanded, Limit.CLOSURE_RESOLUTION);
        }
        // A non-detect counts with half its limit: what closes only by that closes by nothing that was found.
        return unaccounted + doubts.percentOfLimits() > expanded
                ? undecided(Phrase.of(
                        "closes only with half the limits of {} counted as found",
                        String.join(", ", doubts.withinLimits())))
                : new Result(Verdict.CLOSES, Phrase.NONE);
    }

    private Result tooCoarse(MeasuredValue percent, double expanded, Limit limit) {
        Phrase most = percent.budget().stream()
                .findFirst()
                .map(c -> Phrase.of(", most of it from {}", c.reading().name()))
                .orElse(Phrase.NONE);
        return undecided(Phrase.of(
                "too coarse, ± {} for a limit of ± {}{}",
                Figure.decimals(expanded, 1, "%"),
                Figure.decimals(limits.value(limit), 1, "%"),
                most));
    }

    private static Result undecided(Phrase because) {
        return new Result(Verdict.CANNOT_DECIDE, because);
    }

    /**
     * What stands against a verdict.
     *
     * @param leftOut rows of the run that were left out
     * @param unbounded layers that nothing bounds
     * @param boundedByTheBalance layers without an assay that only this balance bounds
     * @param disputed portions whose readings do not agree
     * @param upperBounds lots of which only an upper bound is known
     * @param unknowns places that nothing but a gap bounds
     * @param withinLimits portions in which less than a limit was found
     * @param percentOfLimits what these count for in the balance, half their limits, %
     */
    record Doubts(
            List<String> leftOut,
            List<String> unbounded,
            List<String> boundedByTheBalance,
            List<String> disputed,
            List<String> upperBounds,
            List<String> unknowns,
            List<String> withinLimits,
            double percentOfLimits) {}

    /**
     * A verdict.
     *
     * @param verdict what the balance says
     * @param because why it cannot be decided; else empty
     */
    record Result(Verdict verdict, Phrase because) {}
}
