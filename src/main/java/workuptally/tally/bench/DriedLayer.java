package workuptally.tally.bench;

import java.util.OptionalDouble;
import workuptally.model.Step;

/**
 * An organic layer and its drying agent.
 *
 * @param step the drying step
 * @param agent name of the agent in the reference data
 * @param agentGrams agent used, g
 * @param waterGrams water to bind, g (estimate)
 * @param dropsAssumed true where 1 % of the volume is assumed as drops in it, since no brine wash went before
 * @param capacityGramsPerGram water the agent takes up at best in practice, g/g
 * @param cake label of the cake; empty if none was recorded
 * @param productLowGrams least product held by the cake, g; empty where cake or product is not known
 * @param productHighGrams most product held by the cake, g
 * @param rinsed true where a rinse went over the cake
 * @param product product it would be
 */
public record DriedLayer(
        Step step,
        String agent,
        double agentGrams,
        double waterGrams,
        boolean dropsAssumed,
        double capacityGramsPerGram,
        String cake,
        OptionalDouble productLowGrams,
        OptionalDouble productHighGrams,
        boolean rinsed,
        String product) {

    /** What the water to bind rests on, in words. */
    public String assumption() {
        return assumption(dropsAssumed);
    }

    /** What an estimate of water in a layer rests on, in words. */
    static String assumption(boolean dropsAssumed) {
        return dropsAssumed
                ? "solvent saturated with water, and drops of 1 % of its volume assumed as no brine wash went before"
                : "solvent saturated with water, no drops after the brine wash";
    }

    /** Capacity over water to bind. */
    public double capacityRatio() {
        return agentGrams * capacityGramsPerGram / waterGrams;
    }
}
