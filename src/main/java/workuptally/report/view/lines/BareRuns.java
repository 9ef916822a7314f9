package workuptally.report.view.lines;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.SecondSignature;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.tally.amounts.NotComputed;

/**
 * The runs of a book of which nothing is recorded but charges and the weight of what they gave, and of which nothing is said but notes: the
 * rows of a list of one row a run. From three of them on they are told together, since a part of each would repeat the others.
 *
 * @param runs the runs in order of the book; none where there are fewer than three
 */
public record BareRuns(List<RunReview> runs) {
    private static final int LEAST = 3;

    /** Copies the list. */
    public BareRuns {
        runs = List.copyOf(runs);
    }

    /** Those of a review. */
    public static BareRuns of(Review review) {
        List<RunReview> bare = review.runs().stream().filter(BareRuns::isBare).toList();
        return new BareRuns(bare.size() < LEAST ? List.of() : bare);
    }

    private static boolean isBare(RunReview run) {
        Run own = run.tally().run();
        return own.status() != Run.Status.PLANNED
                && !own.recordsWorkup()
                && run.tally().layers().isEmpty()
                && run.findings().stream().allMatch(f -> f.severity() == Severity.NOTE)
                && SecondSignature.reasons(run).isEmpty();
    }

    /** The others, in order of the book. */
    public List<RunReview> others(Review review) {
        Set<RunReview> bare = Collections.newSetFromMap(new IdentityHashMap<>());
        bare.addAll(runs);
        return review.runs().stream().filter(run -> !bare.contains(run)).toList();
    }

    /** Their notes by code, each with the first of its findings. */
    public List<Note> notes() {
        Map<FindingCode, List<Finding>> byCode = new LinkedHashMap<>();
        for (RunReview run : runs) {
            for (Finding finding : run.findings()) {
                byCode.computeIfAbsent(finding.code(), c -> new ArrayList<>()).add(finding);
            }
        }
        return byCode.values().stream()
                .map(alike -> new Note(alike.get(0), (int)
                        alike.stream().map(Finding::run).distinct().count()))
                .toList();
    }

    /** Kinds of their notes; empty where they have none. */
    public Optional<String> notesInWords() {
        StringJoiner kinds = new StringJoiner("; ", "Notes, in full on the Findings sheet: ", ".");
        notes().forEach(note -> kinds.add(note.first().code().inWords() + times(note.runs())));
        return notes().isEmpty() ? Optional.empty() : Optional.of(kinds.toString());
    }

    /** What could not be computed of them, and why; empty where all was. */
    public Optional<String> notComputedInWords() {
        Map<String, Integer> missing = new LinkedHashMap<>();
        for (RunReview run : runs) {
            run.tally().notComputed().stream()
                    .map(BareRuns::inWords)
                    .distinct()
                    .forEach(words -> missing.merge(words, 1, Integer::sum));
        }
        StringJoiner left = new StringJoiner("; ", "Not computed: ", ".");
        missing.forEach((words, times) -> left.add(words + times(times)));
        return missing.isEmpty() ? Optional.empty() : Optional.of(left.toString());
    }

    private static String inWords(NotComputed missing) {
        return missing.what() + ", because " + missing.because() + " (enter " + missing.unlockedBy() + ")";
    }

    private String times(int number) {
        return number == runs.size() ? "" : " (" + number + (number == 1 ? " run)" : " runs)");
    }

    /**
     * A kind of note.
     *
     * @param first the first finding of this code
     * @param runs number of runs that have one
     */
    public record Note(Finding first, int runs) {}
}
