package workuptally.report.view;

import java.util.OptionalDouble;
import java.util.StringJoiner;
import workuptally.judgement.totals.PeriodTotals;

/** Averages of the yields of a book in a sentence, with what was left out of them. */
public final class YieldAverages {
    private YieldAverages() {}

    /**
     * The sentences.
     *
     * @param most characters for what was left out; the others are counted
     */
    public static String of(PeriodTotals period, ReadableNumbers numbers, int most) {
        StringJoiner text = new StringJoiner(", ", "", ".");
        text.add("Yields that can be stated: " + period.yieldsStated());
        add(text, numbers, "mean", period.meanYieldPercent());
        add(text, numbers, "median", period.medianYieldPercent());
        add(text, numbers, "weighted by moles of theory", period.amountWeightedYieldPercent());
        String left = Words.listed(period.excluded(), "; ", most, more -> more + " more");
        return period.excluded().isEmpty() ? text.toString() : text + " Left out of these: " + left + ".";
    }

    private static void add(StringJoiner text, ReadableNumbers numbers, String name, OptionalDouble percent) {
        if (percent.isPresent()) {
            text.add(name + " " + numbers.fixed(percent.getAsDouble(), 1) + "\u00A0%");
        }
    }
}
