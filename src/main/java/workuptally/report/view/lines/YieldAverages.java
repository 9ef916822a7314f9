package workuptally.report.view.lines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.judgement.totals.RunShare;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.RunNames;
import workuptally.report.view.wording.Words;

/** Averages of the yields of a book in a sentence, with what was left out of them. */
public final class YieldAverages {
    private static final int MOST_NAMED = 6;

    private YieldAverages() {}

    /**
     * The sentences.
     *
     * @param most characters for what was left out; the others are counted
     */
    public static String of(Review review, ReadableNumbers numbers, int most) {
        PeriodTotals period = review.period();
        StringJoiner text = new StringJoiner(", ", "", ".");
        text.add("Yields that can be stated: " + period.yieldsStated());
        add(text, numbers, "mean", period.meanYieldPercent());
        add(text, numbers, "median", period.medianYieldPercent());
        add(text, numbers, "weighted by moles of theory", period.amountWeightedYieldPercent());
        List<String> left = leftOut(review);
        return left.isEmpty()
                ? text.toString()
                : text + " Left out of these: " + Words.listed(left, "; ", most, more -> more + " more reasons") + ".";
    }

    /** What was left out, by the reason, so that each is said once. */
    private static List<String> leftOut(Review review) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        for (RunReview run : review.runs()) {
            for (RunShare.LeftOut left :
                    RunShare.of(run.tally(), review.book().limits()).leftOut()) {
                byReason.computeIfAbsent(left.because(), b -> new ArrayList<>()).add(left.what());
            }
        }
        return byReason.entrySet().stream()
                .map(e -> named(e.getValue()) + " (" + e.getKey() + ")")
                .toList();
    }

    /** Many are counted: their names would leave no room for the reason. */
    private static String named(List<String> yields) {
        return yields.size() > MOST_NAMED ? Words.count(yields.size(), "yield") : RunNames.listed(yields);
    }

    private static void add(StringJoiner text, ReadableNumbers numbers, String name, OptionalDouble percent) {
        if (percent.isPresent()) {
            text.add(name + " " + numbers.fixed(percent.getAsDouble(), 1) + "\u00A0%");
        }
    }
}
