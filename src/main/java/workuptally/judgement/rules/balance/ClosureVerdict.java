package workuptally.judgement.rules.balance;

import java.util.List;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.balance.Closure;

/**
 * What the balance of each partner says: over 100 % stops, open is a note up to the run limit plus U and a check beyond, undecided a check,
 * of a reagent beside the limiting one a note.
 */
public final class ClosureVerdict implements RunRule {

    private static final String SOURCE = "B = Σ a·n / n₀";

    private static final int MOST_NEXT_STEPS = 4;

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CLOSURE_OVER, FindingCode.CLOSURE_OPEN, FindingCode.CLOSURE_CANNOT_DECIDE);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        for (Closure closure : tally.closures()) {
            switch (closure.verdict()) {
                case OVER ->
                    findings.add(
                            FindingCode.CLOSURE_OVER,
                            Severity.STOP,
                            place(tally, closure),
                            seen(closure) + ": more was found than charged",
                            expected(closure),
                            SOURCE,
                            "Look for a layer or lot counted twice, a wrong molar mass or coefficient, or a wet or area-% assay;"
                                    + " keep every layer until it is settled.");
                case OPEN -> open(findings, tally, closure, book);
                case CANNOT_DECIDE ->
                    findings.add(
                            FindingCode.CLOSURE_CANNOT_DECIDE,
                            isOfReagent(tally, closure) || !tally.run().recordsWorkup()
                                    ? Severity.NOTE
                                    : Severity.CHECK,
                            place(tally, closure),
                            seen(closure) + ": it cannot be decided whether it closes"
                                    + (closure.because().isEmpty() ? "" : "; " + closure.because()),
                            FindingList.say(
                                    "U of %.0f %% at most, and an assay or bound for every layer and lot",
                                    book.limits().value(Limit.CLOSURE_RESOLUTION)),
                            SOURCE,
                            next(closure));
                case CLOSES -> {
                    // Nothing to say: the figure stands in the balance.
                }
            }
        }
        return findings.list();
    }

    /** True for the balance of a partner that does not limit the theory, beside one that does. */
    private static boolean isOfReagent(RunTally tally, Closure closure) {
        return tally.closures().size() > 1
                && tally.theory()
                        .filter(t -> !t.limiting().isEmpty()
                                && t.limiting().stream()
                                        .noneMatch(l -> l.material().equalsIgnoreCase(closure.skeleton())))
                        .isPresent();
    }

    /** What would settle it, the largest unknown first. */
    private static String next(Closure closure) {
        return closure.candidates().isEmpty()
                ? "Measure again what U rests on most; explain shows its share."
                : closure.candidates().stream()
                        .map(Closure.Candidate::settledBy)
                        .distinct()
                        .limit(MOST_NEXT_STEPS)
                        .collect(Collectors.joining(
                                "; ", "In this order: ", ". If U stays too wide, explain shows what it rests on."));
    }

    private static void open(FindingList findings, RunTally tally, Closure closure, Book book) {
        double limit = book.limits().value(Limit.RUN_LIMIT) + closure.expandedUncertaintyPercent();
        String most = closure.candidates().isEmpty()
                ? ""
                : "; it may be in " + closure.candidates().get(0).place();
        findings.add(
                FindingCode.CLOSURE_OPEN,
                closure.unaccountedPercent() > limit ? Severity.CHECK : Severity.NOTE,
                place(tally, closure),
                seen(closure)
                        + FindingList.say(": open by %.1f %%", closure.unaccountedPercent())
                        + (closure.unaccountedAs().isEmpty()
                                ? ""
                                : FindingList.say(
                                        ", %.3g g as %s", closure.unaccountedGrams(), closure.unaccountedAs()))
                        + most,
                expected(closure),
                SOURCE,
                closure.candidates().isEmpty()
                        ? "Look at layers without an assay, cakes, distillates and by-products that are not named."
                        : "Cheapest next step: " + closure.candidates().get(0).settledBy() + ".");
    }

    private static String seen(Closure closure) {
        return FindingList.say(
                "balance on %s %.1f ± %.1f %% (k = %s)",
                closure.skeleton(),
                closure.percent().value(),
                closure.expandedUncertaintyPercent(),
                FindingList.plain(closure.coverageFactor()));
    }

    private static String expected(Closure closure) {
        return FindingList.say("100 %% within ± %.1f %%", closure.expandedUncertaintyPercent());
    }

    private static Place place(RunTally tally, Closure closure) {
        return tally.run().charges().stream()
                .filter(c -> c.material().equalsIgnoreCase(closure.skeleton()))
                .map(Charge::row)
                .map(r -> r.at("Material"))
                .findFirst()
                .orElse(tally.run().row().at("Run"));
    }
}
