package workuptally.report.view.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import workuptally.judgement.Review;
import workuptally.judgement.WeekWaste;
import workuptally.judgement.totals.PeriodTotals.StreamTotal;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Words;

/**
 * Layers by stream, the largest first: those of the book, or, where it has runs of several weeks, those of the last one beside the mean of
 * the weeks before.
 *
 * @param title what is shown, with the total
 * @param bars a bar for each stream, what has no room in the last of them
 */
public record WasteBars(String title, List<Bar> bars) {
    /** Copies the list. */
    public WasteBars {
        bars = List.copyOf(bars);
    }

    /**
     * The bars; none without waste.
     *
     * @param most number of streams that have a bar of their own
     */
    public static WasteBars of(Review review, ReadableNumbers numbers, int most) {
        List<WeekWaste> weeks = WeekWaste.of(review);
        if (weeks.size() < 2) {
            List<Bar> bars = review.period().waste().stream()
                    .map(s -> new Bar(s.streamName(), s.massGrams(), s.withoutMass() > 0, OptionalDouble.empty()))
                    .toList();
            return new WasteBars(
                    "Layers by the stream that their make-up suggests, " + least(bars) + kilograms(sum(bars), numbers)
                            + " in all",
                    few(bars, most));
        }
        WeekWaste last = weeks.get(weeks.size() - 1);
        List<WeekWaste> before = weeks.subList(0, weeks.size() - 1);
        Map<String, String> names = new LinkedHashMap<>();
        weeks.forEach(w -> w.streams().forEach((StreamTotal s) -> names.putIfAbsent(s.stream(), s.streamName())));
        List<Bar> bars = new ArrayList<>();
        names.forEach((stream, name) -> bars.add(new Bar(
                name,
                last.grams(stream),
                last.streams().stream().anyMatch(s -> s.stream().equals(stream) && s.withoutMass() > 0),
                OptionalDouble.of(
                        before.stream().mapToDouble(w -> w.grams(stream)).sum() / before.size()))));
        double mean = before.stream().mapToDouble(WeekWaste::grams).sum() / before.size();
        return new WasteBars(
                "Layers by stream, week of " + last.monday() + ": " + least(bars) + kilograms(last.grams(), numbers)
                        + (before.size() == 1
                                ? " (line: the week before, "
                                : " (line: mean of " + before.size() + " weeks before, ")
                        + kilograms(mean, numbers) + ")",
                few(bars, most));
    }

    /** Mass in kg. */
    public static String kilograms(double grams, ReadableNumbers numbers) {
        return numbers.amount(grams / 1000, grams < 10 ? 3 : 2) + "\u00A0kg";
    }

    /** A total with anything that was not weighed in it is a least one. */
    private static String least(List<Bar> bars) {
        return bars.stream().anyMatch(Bar::isLeast) ? "≥\u00A0" : "";
    }

    private static double sum(List<Bar> bars) {
        return bars.stream().mapToDouble(Bar::grams).sum();
    }

    private static List<Bar> few(List<Bar> bars, int most) {
        List<Bar> sorted = bars.stream()
                .sorted(Comparator.comparingDouble(Bar::grams).reversed())
                .toList();
        if (sorted.size() <= most + 1) {
            return sorted;
        }
        List<Bar> few = new ArrayList<>(sorted.subList(0, most));
        List<Bar> rest = sorted.subList(most, sorted.size());
        few.add(new Bar(
                Words.count(rest.size(), "smaller stream"),
                sum(rest),
                rest.stream().anyMatch(Bar::isLeast),
                rest.get(0).beforeGrams().isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(rest.stream()
                                .mapToDouble(b -> b.beforeGrams().orElse(0))
                                .sum())));
        return few;
    }

    /**
     * A stream.
     *
     * @param name name
     * @param grams mass of its layers, g
     * @param isLeast whether the amount of a layer in it is not recorded
     * @param beforeGrams mean of the weeks before, g; empty without such weeks
     */
    public record Bar(String name, double grams, boolean isLeast, OptionalDouble beforeGrams) {
        /** The mass as it is shown: what nobody weighed is not nothing. */
        public String inWords(ReadableNumbers numbers) {
            return isLeast && grams == 0 ? "not recorded" : least(List.of(this)) + kilograms(grams, numbers);
        }
    }
}
