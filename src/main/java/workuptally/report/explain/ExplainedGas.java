package workuptally.report.explain;

import java.util.ArrayList;
import java.util.List;
import workuptally.report.view.wording.Wording;
import workuptally.tally.RunTally;
import workuptally.tally.bench.StepReaction;

/** Gas and neutralisation at each step. */
final class ExplainedGas {
    private final Numbers numbers;

    ExplainedGas(Numbers numbers) {
        this.numbers = numbers;
    }

    List<Explanation> of(RunTally tally) {
        List<Explanation> all = new ArrayList<>();
        for (StepReaction reaction : tally.evidence().reactions()) {
            if (!reaction.gas().isEmpty() && reaction.worstMillimoles() > 0) {
                all.add(gas(reaction));
            }
            if (reaction.capacityRatio().isPresent()) {
                all.add(capacity(reaction));
            }
        }
        return all;
    }

    private Explanation gas(StepReaction reaction) {
        double molarLitres = 1000 * reaction.worstLitres() / reaction.worstMillimoles();
        Draft draft = new Draft(
                        FigureKind.GAS,
                        reaction.gas() + " at step " + reaction.step().number())
                .equation("V = n·R·T/p = n·V(molar), ideal gas at room temperature and pressure")
                .equation("V = " + numbers.plain(reaction.expectedMillimoles()) + " mmol × "
                        + numbers.plain(molarLitres) + " L/mol / 1000")
                .note("n: " + Wording.POINT.of(reaction.because()) + ".")
                .note("If nothing was used up before: " + numbers.plain(reaction.worstMillimoles()) + " mmol, "
                        + numbers.decimals(reaction.worstLitres(), 2) + " L.");
        if (reaction.loads() > 1) {
            draft.note("In " + reaction.loads() + " loads, "
                    + numbers.decimals(reaction.expectedLitres() / reaction.loads(), 2) + " L each.");
        }
        return draft.result(numbers.decimals(reaction.expectedLitres(), 2) + " L");
    }

    private Explanation capacity(StepReaction reaction) {
        Draft draft = new Draft(
                        FigureKind.GAS,
                        "Capacity of the wash at step " + reaction.step().number())
                .equation("ratio = n(wash)/n(to neutralise)")
                .equation("ratio = " + numbers.plain(reaction.washMillimoles()) + " mmol / "
                        + numbers.plain(reaction.toNeutraliseMillimoles()) + " mmol")
                .note("To neutralise: " + Wording.POINT.of(reaction.because()) + ".");
        reaction.neededMillilitres()
                .ifPresent(v -> draft.note("Just enough: " + numbers.decimals(v, 1) + " mL of this wash."));
        return draft.result(numbers.decimals(reaction.capacityRatio().orElseThrow(), 2));
    }
}
