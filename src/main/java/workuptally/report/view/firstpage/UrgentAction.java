package workuptally.report.view.firstpage;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.Severity;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.RunNames;
import workuptally.report.view.wording.Words;

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

    /** Lines that a first page has for actions. */
    public static final int MOST_LINES = 7;

    /** Copies the list. */
    public UrgentAction {
        runs = List.copyOf(runs);
    }

    /**
     * What to do first, by harm and then by the product at stake; like findings are one line. No stop is left out: each stands with its
     * run. Behind them stand the gravest checks, up to three where there is room, and on one line more where there is none.
     *
     * @param most number of lines, at least 3; holds that find no room share the last one
     */
    public static List<UrgentAction> of(Review review, ReadableNumbers numbers, int most) {
        List<String> order = review.runs().stream().map(RunReview::id).toList();
        List<UrgentAction> urgent = new FewActions(order).of(new UrgentActionRanking(review, numbers).ranked(), most);
        return Stream.concat(
                        urgent.stream(),
                        new ChecksToSettle(review, numbers).lines(Math.max(1, most - urgent.size())).stream())
                .toList();
    }

    /** What is said where nothing has to be done first; checks that are left for later are counted, with their runs. */
    public static String nothingFirst(Review review) {
        List<String> runs = review.runs().stream()
                .filter(run -> run.has(Severity.CHECK))
                .map(RunReview::id)
                .toList();
        long checks = review.findings().stream()
                .filter(f -> f.severity() == Severity.CHECK)
                .count();
        if (checks == 0) {
            return "No stop and no hold.";
        }
        String where = runs.isEmpty() ? "the book" : RunNames.listed(runs, MOST_CHARACTERS);
        return "No stop and no hold; " + Words.count(checks, "check") + " before reporting: " + where + ".";
    }
}
