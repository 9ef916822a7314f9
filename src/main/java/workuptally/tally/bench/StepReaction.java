package workuptally.tally.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Phrase;
import workuptally.model.Step;

/**
 * Neutralisation and gas at one step.
 *
 * @param step the step
 * @param gas formula of the gas, for example {@code CO2}; empty where none is expected
 * @param expectedMillimoles gas expected, mmol
 * @param worstMillimoles gas if nothing was consumed before, mmol
 * @param expectedLitres the same at room temperature and pressure, L
 * @param worstLitres the same, L
 * @param loads loads the gas comes off in
 * @param washMillimoles acid or base that the wash brings, mmol
 * @param toNeutraliseMillimoles acid or base it meets, as expected, mmol
 * @param worstToNeutraliseMillimoles the same if nothing was consumed before, mmol
 * @param capacityRatio wash over what it meets; empty where it meets nothing
 * @param neededMillilitres volume of this wash that would just neutralise what is expected, mL
 * @param because what the figures rest on
 */
public record StepReaction(
        Step step,
        String gas,
        double expectedMillimoles,
        double worstMillimoles,
        double expectedLitres,
        double worstLitres,
        int loads,
        double washMillimoles,
        double toNeutraliseMillimoles,
        double worstToNeutraliseMillimoles,
        OptionalDouble capacityRatio,
        OptionalDouble neededMillilitres,
        Phrase because) {
    /** Mass of the gas expected to leave from all steps together, g. */
    public static double gasGrams(List<StepReaction> reactions) {
        return reactions.stream()
                .mapToDouble(r -> r.expectedMillimoles()
                        * r.leaving().map(LeavingGas::gramsPerMole).orElse(0.0)
                        / 1000)
                .sum();
    }

    /** The gas, where it is one that leaves. */
    public Optional<LeavingGas> leaving() {
        return LeavingGas.ofFormula(gas);
    }

    /** Volume of this wash that the worst case would take, mL. */
    public OptionalDouble neededAtWorstMillilitres() {
        return neededMillilitres.isPresent()
                ? OptionalDouble.of(
                        neededMillilitres.getAsDouble() * worstToNeutraliseMillimoles / toNeutraliseMillimoles)
                : OptionalDouble.empty();
    }
}
