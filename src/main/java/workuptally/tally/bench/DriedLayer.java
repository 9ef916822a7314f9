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
        double capacityGramsPerGram,
        String cake,
        OptionalDouble productLowGrams,
        OptionalDouble productHighGrams,
        boolean rinsed,
        String product) {

    /** Capacity over water to bind. */
    public double capacityRatio() {
        return agentGrams * capacityGramsPerGram / waterGrams;
    }
}
