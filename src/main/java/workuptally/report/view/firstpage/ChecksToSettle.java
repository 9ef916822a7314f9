package workuptally.report.view.firstpage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import workuptally.judgement.GraveChecks;
import workuptally.judgement.Review;
import workuptally.model.Finding;
import workuptally.model.Severity;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.RunNames;
import workuptally.report.view.wording.Wording;

/** The gravest checks, each in the words of what was seen; those without a line share the last one. */
final class ChecksToSettle {
    private static final int MOST = 3;
    private static final String CUT = " …";

    private final List<Finding> checks;
    private final Wording wording;

    ChecksToSettle(Review review, ReadableNumbers numbers) {
        this.checks = GraveChecks.of(review);
        this.wording = new Wording(numbers.mark());
    }

    /**
     * The lines.
     *
     * @param room how many there is room for, at least 1
     */
    List<UrgentAction> lines(int room) {
        int most = Math.min(room, MOST);
        int alone = checks.size() <= most ? checks.size() : most - 1;
        List<UrgentAction> lines = new ArrayList<>();
        checks.subList(0, alone).forEach(check -> lines.add(line(where(check), check.run(), shortly(check))));
        if (alone < checks.size()) {
            List<Finding> rest = checks.subList(alone, checks.size());
            List<String> runs =
                    rest.stream().map(Finding::run).filter(r -> !r.isEmpty()).toList();
            lines.add(new UrgentAction(
                    Severity.CHECK,
                    rest.size() + " others",
                    runs,
                    "Settle before reporting: " + together(rest),
                    OptionalDouble.empty()));
        }
        return lines;
    }

    private static UrgentAction line(String where, String run, String text) {
        return new UrgentAction(
                Severity.CHECK, where, run.isEmpty() ? List.of() : List.of(run), text, OptionalDouble.empty());
    }

    private static String where(Finding check) {
        return check.run().isEmpty() ? "the book" : check.run();
    }

    private static String together(List<Finding> rest) {
        List<String> names = rest.stream().map(ChecksToSettle::where).distinct().toList();
        return RunNames.listed(names, UrgentAction.MOST_CHARACTERS - 30);
    }

    /** What was seen, to the last whole clause that a line holds. */
    private String shortly(Finding check) {
        String seen = wording.of(check.seen());
        if (seen.length() <= UrgentAction.MOST_CHARACTERS) {
            return seen;
        }
        String start = seen.substring(0, UrgentAction.MOST_CHARACTERS - CUT.length());
        int clause = start.lastIndexOf("; ");
        return start.substring(0, clause > start.length() / 2 ? clause : start.lastIndexOf(' ')) + CUT;
    }
}
