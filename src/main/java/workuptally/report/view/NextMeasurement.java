package workuptally.report.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.model.Severity;
import workuptally.tally.balance.Closure;

/**
 * A measurement that would settle where product is, by what the balances and the layer decisions say is missing.
 *
 * @param run run id
 * @param test what to do, in a few words
 * @param settles what it would settle
 * @param grams product that it is about at most, g
 */
public record NextMeasurement(String run, String test, String settles, double grams) {
    /** The measurements that are about the most product, each once. */
    public static List<NextMeasurement> of(Review review, Wording wording, int most) {
        List<NextMeasurement> all = new ArrayList<>();
        for (RunReview run : review.runs()) {
            // with a stop open the balance itself is in doubt, and its own action comes first
            if (!run.has(Severity.STOP)) {
                Set<String> told = new HashSet<>();
                ofClosures(run, wording, told, all);
                ofDecisions(run, wording, told, all);
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(NextMeasurement::grams).reversed())
                .limit(most)
                .toList();
    }

    private static void ofClosures(RunReview run, Wording wording, Set<String> told, List<NextMeasurement> all) {
        ReadableNumbers numbers = new ReadableNumbers(wording.mark());
        for (Closure closure : run.tally().closures()) {
            for (Closure.Candidate candidate : closure.candidates()) {
                if (told.add(candidate.settledBy())) {
                    all.add(new NextMeasurement(
                            run.id(),
                            candidate.settledBy(),
                            numbers.significant(Math.abs(closure.unaccountedGrams()), 2)
                                    + "\u00A0g is unaccounted; " + candidate.place() + " may hold up to "
                                    + numbers.significant(candidate.highGrams(), 2) + "\u00A0g",
                            candidate.highGrams()));
                }
            }
        }
    }

    private static void ofDecisions(RunReview run, Wording wording, Set<String> told, List<NextMeasurement> all) {
        ReadableNumbers numbers = new ReadableNumbers(wording.mark());
        for (LayerDecision decision : run.decisions()) {
            if (decision.outcome() == Outcome.MEASURE_FIRST
                    && !decision.missing().isEmpty()) {
                String test =
                        decision.layer() + ": " + wording.of(decision.missing().get(0));
                double grams =
                        decision.atMost().map(LayerDecision.AtMost::grams).orElse(0.0);
                if (told.add(test)) {
                    all.add(new NextMeasurement(
                            run.id(),
                            test,
                            grams > 0
                                    ? "up to " + numbers.significant(grams, 2) + "\u00A0g can be there"
                                    : "nothing bounds what it holds",
                            grams));
                }
            }
        }
    }
}
