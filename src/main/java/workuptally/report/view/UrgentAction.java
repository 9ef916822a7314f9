package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import workuptally.judgement.Review;
import workuptally.model.Severity;

/**
 * Something that a person has to do, in one line.
 *
 * @param severity the gravest of what it is about
 * @param where run, or what else it is about, {@code 3 runs}
 * @param runs the runs, in order of the book; empty for transfers and the book itself
 * @param text what to do
 * @param gramsAtStake product at stake, g; empty where it is not about product
 */
public record UrgentAction(
        Severity severity, String where, List<String> runs, String text, OptionalDouble gramsAtStake) {
    /** Characters that a line holds beside its run, state and grams. */
    public static final int MOST_CHARACTERS = 96;

    /** Copies the list. */
    public UrgentAction {
        runs = List.copyOf(runs);
    }

    /**
     * What to do first, by harm and then by the product at stake; like findings are one line.
     *
     * @param most number of lines; what is left over is counted in the last of them
     */
    public static List<UrgentAction> of(Review review, ReadableNumbers numbers, int most) {
        List<UrgentAction> all = new UrgentActions(review, numbers).ranked();
        if (all.size() <= most) {
            return all;
        }
        List<UrgentAction> shown = new ArrayList<>(all.subList(0, most - 1));
        List<UrgentAction> rest = all.subList(most - 1, all.size());
        List<String> runs =
                rest.stream().flatMap(a -> a.runs().stream()).distinct().toList();
        String text = "More to settle, each with its run: "
                + Words.listed(runs, ", ", MOST_CHARACTERS - 42, more -> Words.count(more, "more run"));
        double grams =
                rest.stream().mapToDouble(a -> a.gramsAtStake().orElse(0)).max().orElse(0);
        shown.add(new UrgentAction(
                rest.get(0).severity(),
                runs.isEmpty() ? "the book" : Words.count(runs.size(), "run"),
                runs,
                runs.isEmpty() ? "More to settle: see the end of this report" : text,
                grams > 0 ? OptionalDouble.of(grams) : OptionalDouble.empty()));
        return shown;
    }
}
