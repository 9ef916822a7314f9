package workuptally.tally.bench;

import java.util.List;
import java.util.OptionalDouble;
import workuptally.model.Phrase;
import workuptally.model.Step;

/**
 * Neutralisation and gas at one step.
 *
 * @param step the step
 * @param gas formula of the gas, {@code CO2} or {@code H2}; empty where none is expected
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
    private static final double CARBON_DIOXIDE_GRAMS_PER_MOLE = 44.009;
    private static final double HYDROGEN_GRAMS_PER_MOLE = 2.016;

    /** Mass of the gas expected from all steps together, g; molar masses from the abridged IUPAC atomic weights. */
    public static double gasGrams(List<StepReaction> reactions) {
        return reactions.stream()
                .mapToDouble(r -> switch (r.gas()) {
                    case "CO2" -> r.expectedMillimoles() * CARBON_DIOXIDE_GRAMS_PER_MOLE / 1000;
                    case "H2" -> r.expectedMillimoles() * HYDROGEN_GRAMS_PER_MOLE / 1000;
                    default -> 0;
                })
                .sum();
    }

    /** Volume of this wash that the worst case would take, mL. */
    public OptionalDouble neededAtWorstMillilitres() {
        return neededMillilitres.isPresent()
                ? OptionalDouble.of(
                        neededMillilitres.getAsDouble() * worstToNeutraliseMillimoles / toNeutraliseMillimoles)
                : OptionalDouble.empty();
    }
}
