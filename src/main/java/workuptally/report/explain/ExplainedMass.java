package workuptally.report.explain;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import workuptally.model.Amount;
import workuptally.model.Dimension;
import workuptally.model.Step;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.balance.MassBalance;

/** Total mass in, total mass out, and the gap. */
final class ExplainedMass {
    private final Numbers numbers;

    ExplainedMass(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        tally.massBalance().ifPresent(balance -> {
            all.add(in(tally, balance));
            all.add(out(balance));
            all.add(gap(balance));
        });
        return all;
    }

    private Explanation in(RunTally tally, MassBalance balance) {
        Draft draft = new Draft(FigureKind.MASS, "Total mass in")
                .equation("Σm, m as weighed or V·ρ")
                .headings("What", "As", "m (g)", "From");
        Iterator<ChargeAmount> charges = tally.amounts().iterator();
        List<Step> steps = new ArrayList<>(tally.run().orderedSteps());
        for (MassBalance.Line line : balance.lines()) {
            if (line.side() == MassBalance.Side.IN) {
                String from = charges.hasNext() ? of(charges.next()) : step(steps, line);
                draft.row(line.label(), line.category().word(), numbers.plain(line.grams()), from);
            }
        }
        return draft.result(balance.inGrams(), "g", numbers);
    }

    private String of(ChargeAmount amount) {
        Optional<Amount> entry = amount.planned()
                ? amount.charge().quantity().planned()
                : amount.charge().quantity().actual();
        if (entry.filter(a -> a.dimension() == Dimension.MASS).isPresent()) {
            return numbers.entry(entry.get().value(), "g").orElse("");
        }
        return amount.volumeMillilitres()
                .map(v -> byVolume(v.value(), amount.massGrams().orElseThrow().value()))
                .orElse("by its amount");
    }

    /** The step that added a line's material; each step is taken once, in order. */
    private String step(List<Step> steps, MassBalance.Line line) {
        for (Step step : steps) {
            if (step.added().material().equals(line.label())) {
                steps.remove(step);
                double portions = step.added().portionCount();
                return step.added()
                        .massGrams()
                        .entered()
                        .map(m -> "step " + step.number() + ", weighed")
                        .or(() -> step.added()
                                .volumeMillilitres()
                                .entered()
                                .map(v -> "step " + step.number() + ", "
                                        + byVolume(
                                                portions * v.value(),
                                                line.grams().value())))
                        .orElse("");
            }
        }
        return "";
    }

    private String byVolume(double millilitres, double grams) {
        return numbers.plain(millilitres) + " mL × " + numbers.plain(grams / millilitres) + " g/mL";
    }

    private Explanation out(MassBalance balance) {
        Draft draft = new Draft(FigureKind.MASS, "Total mass out")
                .equation("Σm of what is left in the end")
                .headings("What", "As", "m (g)");
        balance.lines().stream()
                .filter(l -> l.side() == MassBalance.Side.OUT)
                .forEach(l -> draft.row(l.label(), l.category().word(), numbers.plain(l.grams())));
        return draft.result(balance.outGrams(), "g", numbers);
    }

    private Explanation gap(MassBalance balance) {
        Draft draft = new Draft(FigureKind.MASS, "Gap of the total mass")
                .equation("gap = in − out")
                .equation("gap = " + numbers.plain(balance.inGrams()) + " g − " + numbers.plain(balance.outGrams())
                        + " g")
                .note("Gas expected to have left: " + numbers.decimals(balance.gasGrams(), 2)
                        + " g; organic solvent charged: " + numbers.decimals(balance.organicSolventGrams(), 1)
                        + " g"
                        + (balance.gapPercentOfOrganic().isPresent()
                                ? ", of which the gap is "
                                        + numbers.decimals(
                                                balance.gapPercentOfOrganic().getAsDouble(), 1)
                                        + " %"
                                : "")
                        + (balance.solutionSolventGrams() > 0
                                ? "; solvent of reagents in solution: "
                                        + numbers.decimals(balance.solutionSolventGrams(), 1) + " g"
                                : "")
                        + "; allowance for evaporation: "
                        + numbers.decimals(balance.evaporationAllowanceGrams(), 1) + " g.");
        if (!balance.complete()) {
            draft.note("A layer or lot has no mass, so that the gap is only an upper limit.");
        }
        return draft.result(balance.gapGrams(), "g", numbers);
    }
}
