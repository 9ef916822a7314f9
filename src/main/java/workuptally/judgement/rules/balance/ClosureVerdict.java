package workuptally.judgement.rules.balance;

import java.util.List;
import java.util.stream.Collectors;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
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
                            Phrase.of("{}: more was found than charged", seen(closure)),
                            expected(closure),
                            SOURCE,
                            Phrase.of(
                                    "Look for a layer or lot counted twice, a wrong molar mass or coefficient, or a wet or area-% assay; keep"
                                            + " every layer until it is settled."));
                case OPEN -> open(findings, tally, closure, book);
                case CANNOT_DECIDE ->
                    findings.add(
                            FindingCode.CLOSURE_CANNOT_DECIDE,
                            isOfReagent(tally, closure) || !tally.run().recordsWorkup()
                                    ? Severity.NOTE
                                    : Severity.CHECK,
                            place(tally, closure),
                            Phrase.of(
                                    "{}: it cannot be decided whether it closes{}",
                                    seen(closure),
                                    closure.because().isEmpty() ? Phrase.NONE : Phrase.of("; {}", closure.because())),
                            Phrase.of(
                                    "{}an assay or bound for every layer and lot",
                                    isTooWide(closure, book)
                                            ? Phrase.of(
                                                    "U of {} at most, and ",
                                                    Figure.decimals(
                                                            book.limits().value(Limit.CLOSURE_RESOLUTION), 0, "%"))
                                            : Phrase.NONE),
                            SOURCE,
                            next(closure, isTooWide(closure, book)));
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
                                && t.limiting().stream().noneMatch(l -> l.isOf(closure.skeleton())))
                        .isPresent();
    }

    private static boolean isTooWide(Closure closure, Book book) {
        return closure.expandedUncertaintyPercent() > book.limits().value(Limit.CLOSURE_RESOLUTION);
    }

    /** What would settle it, the largest unknown first. */
    private static Phrase next(Closure closure, boolean tooWide) {
        return closure.candidates().isEmpty()
                ? Phrase.of("Measure again what U rests on most; explain shows its share.")
                : Phrase.of(
                        tooWide
                                ? "In this order: {}. If U stays too wide, explain shows what it rests on."
                                : "In this order: {}.",
                        closure.candidates().stream()
                                .map(Closure.Candidate::settledBy)
                                .distinct()
                                .limit(MOST_NEXT_STEPS)
                                .collect(Collectors.joining("; ")));
    }

    private static void open(FindingList findings, RunTally tally, Closure closure, Book book) {
        double limit = book.limits().value(Limit.RUN_LIMIT) + closure.expandedUncertaintyPercent();
        Phrase most = closure.candidates().isEmpty()
                ? Phrase.NONE
                : Phrase.of("; look first at {}{}", closure.candidates().get(0).place(), withoutPlace(closure));
        findings.add(
                FindingCode.CLOSURE_OPEN,
                closure.unaccountedPercent() > limit ? Severity.CHECK : Severity.NOTE,
                place(tally, closure),
                Phrase.of(
                        "{}: open by {}{}{}",
                        seen(closure),
                        Figure.decimals(closure.unaccountedPercent(), 1, "%"),
                        closure.unaccountedAs().isEmpty()
                                ? Phrase.NONE
                                : Phrase.of(
                                        ", {} as {}",
                                        Figure.digits(closure.unaccountedGrams(), 3, "g"),
                                        closure.unaccountedAs()),
                        most),
                expected(closure),
                SOURCE,
                closure.candidates().isEmpty()
                        ? Phrase.of(
                                "Look at layers without an assay, cakes, distillates and by-products that are not named.")
                        : Phrase.of(
                                "Cheapest next step: {}.",
                                closure.candidates().get(0).settledBy()));
    }

    private static Phrase withoutPlace(Closure closure) {
        return closure.withoutPlaceGrams() > 0
                ? Phrase.of(
                        ", but at least {} is more than every place named can hold",
                        Figure.digits(closure.withoutPlaceGrams(), 2, "g"))
                : Phrase.NONE;
    }

    private static Phrase seen(Closure closure) {
        return Phrase.of(
                "balance on {} {} (k = {})",
                closure.skeleton(),
                Figure.pair(closure.percent().value(), closure.expandedUncertaintyPercent(), 1, "%"),
                Figure.brief(closure.coverageFactor(), ""));
    }

    private static Phrase expected(Closure closure) {
        return Phrase.of("100 % within ± {}", Figure.decimals(closure.expandedUncertaintyPercent(), 1, "%"));
    }

    private static Place place(RunTally tally, Closure closure) {
        return tally.run().charges().stream()
                .filter(c -> c.isOf(closure.skeleton()))
                .map(Charge::row)
                .map(r -> r.at("Material"))
                .findFirst()
                .orElse(tally.run().row().at("Run"));
    }
}
