package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import workuptally.judgement.RunReview;
import workuptally.tally.RunTally;

/** Every figure of a run, explained. */
public final class ExplainedRun {
    private final Numbers numbers;

    /**
     * With a coverage factor for expanded uncertainties.
     *
     * @param coverageFactor k, above 0
     */
    public ExplainedRun(double coverageFactor) {
        this.numbers = new Numbers(coverageFactor);
    }

    /** All figures of a run, in the order in which they follow from each other. */
    public List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        all.addAll(new ExplainedAmounts(numbers).of(tally));
        all.addAll(new ExplainedTheory(numbers).of(tally));
        all.addAll(new ExplainedLots(numbers).of(tally));
        all.addAll(new ExplainedYields(numbers).of(tally));
        all.addAll(new ExplainedLayers(numbers).of(tally));
        all.addAll(new ExplainedRoutes(numbers).of(tally));
        all.addAll(new ExplainedGains(numbers).of(tally));
        all.addAll(new ExplainedClosures(numbers).of(tally));
        all.addAll(new ExplainedMass(numbers).of(tally));
        all.addAll(new ExplainedSolvents(numbers).of(tally));
        all.addAll(new ExplainedContacts(numbers).of(tally));
        all.addAll(new ExplainedGas(numbers).of(tally));
        all.addAll(new ExplainedMetrics(numbers).of(tally));
        return all;
    }

    /** All figures of a run, then the entries to look at again. */
    public List<Explanation> of(RunReview run) {
        List<Explanation> all = of(run.tally());
        all.addAll(new ExplainedSuspects(numbers).of(run.suspects()));
        return all;
    }

    /** The figures of a run, or the entries to look at again, that a word asks for; empty list where nothing is meant by it. */
    public List<Explanation> of(RunReview run, String word) {
        return meant(of(run), word);
    }

    /**
     * The figures of a run that a word asks for.
     *
     * @param word a kind of figure ({@code yield}, {@code closures}), or part of a title ({@code A1}, {@code benzoic acid})
     * @return empty list where nothing is meant by it
     */
    public List<Explanation> of(RunTally tally, String word) {
        return meant(of(tally), word);
    }

    private static List<Explanation> meant(List<Explanation> all, String word) {
        String wanted = word.strip();
        List<Explanation> byKind =
                all.stream().filter(e -> e.kind().isMeantBy(wanted)).toList();
        return isKind(wanted)
                ? byKind
                : all.stream().filter(e -> holds(e.title(), wanted)).toList();
    }

    /** True where a word names a kind of figure, whether or not the run has one of it. */
    public static boolean isKind(String word) {
        for (FigureKind kind : FigureKind.values()) {
            if (kind.isMeantBy(word)) {
                return true;
            }
        }
        return false;
    }

    private static boolean holds(String title, String word) {
        return !word.isEmpty()
                && title.toLowerCase(java.util.Locale.ROOT).contains(word.toLowerCase(java.util.Locale.ROOT));
    }
}
