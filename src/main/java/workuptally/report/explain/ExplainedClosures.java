package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import workuptally.tally.RunTally;
import workuptally.tally.balance.Closure;

/** Closure on each skeleton: what was found where, over what was charged, and where the rest can be. */
final class ExplainedClosures {
    private final Numbers numbers;

    ExplainedClosures(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        for (Closure closure : tally.closures()) {
            all.add(of(closure));
            if (!closure.candidates().isEmpty()) {
                all.add(rest(closure));
            }
        }
        return all;
    }

    private Explanation of(Closure closure) {
        Draft draft = new Draft(FigureKind.CLOSURES, "Closure on " + closure.skeleton())
                .equation("B = 100·Σ(a·n)/n₀, a = units of " + closure.skeleton() + " in one molecule")
                .headings("Place", "Substance", "a (per molecule)", "a·n (mmol)", "Share (%)", "Known by");
        double sum = 0;
        for (Closure.Term term : closure.terms()) {
            sum += term.unitsMillimoles().value();
            draft.row(
                    term.place(),
                    term.substance(),
                    numbers.plain(term.unitsPerMolecule()),
                    numbers.plain(term.unitsMillimoles()),
                    numbers.decimals(term.percent(), 2),
                    term.kind().word());
        }
        return draft.equation("B = 100 × " + numbers.plain(sum) + " mmol / "
                        + numbers.plain(closure.chargedMillimoles()) + " mmol")
                .note(comparison(closure) + ": " + closure.verdict().word() + ".")
                .result(closure.percent(), "%", numbers);
    }

    private String comparison(Closure closure) {
        double gap = Math.abs(closure.unaccountedPercent());
        double expanded = closure.expandedUncertaintyPercent();
        return "|100 − B| = " + numbers.decimals(gap, 2) + (gap > expanded ? " > " : " ≤ ") + "U = "
                + numbers.plain(closure.coverageFactor()) + "·u = " + numbers.decimals(expanded, 2) + " %";
    }

    private Explanation rest(Closure closure) {
        double percent = closure.unaccountedPercent();
        double charged = closure.chargedMillimoles().value();
        double gramsPerUnit = percent == 0 ? 0 : closure.unaccountedGrams() / percent * 100 / charged * 1000;
        Draft draft = new Draft(FigureKind.CLOSURES, "Unaccounted on " + closure.skeleton())
                .equation("m = (100 − B)/100·n₀·M/a/1000, M and a of " + closure.unaccountedAs())
                .equation("m = " + numbers.plain(percent) + " / 100 × " + numbers.plain(charged) + " mmol × "
                        + numbers.molarMass(gramsPerUnit) + " g/mol / 1000")
                .headings("It can be in", "From (g)", "To (g)", "Settled by");
        for (Closure.Candidate candidate : closure.candidates()) {
            draft.row(
                            candidate.place(),
                            numbers.decimals(candidate.lowGrams(), 3),
                            numbers.decimals(candidate.highGrams(), 3),
                            candidate.settledBy())
                    .note(candidate.place() + ": " + candidate.evidence() + ".");
        }
        if (closure.withoutPlaceGrams() > 0) {
            draft.note("At least " + numbers.decimals(closure.withoutPlaceGrams(), 3)
                    + " g is more than these places can hold together.");
        }
        return draft.result(numbers.decimals(closure.unaccountedGrams(), 3) + " g");
    }
}
