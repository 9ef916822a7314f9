package workuptally.chemistry;

/**
 * Drying agent for an organic layer: water to bind, agent needed, solution held on the cake.
 *
 * <p>Capacity is not performance: how much of the dissolved water an agent takes in minutes is less than its hydrate says.
 */
public final class Drying {
    /** Density of water at 20 °C, g/mL. Source: CRC Handbook of Chemistry and Physics. */
    private static final double WATER_GRAMS_PER_MILLILITRE = 0.9982;

    private Drying() {}

    /**
     * Water to bind, m = w(sat)·m(layer)/100 + entrained drops.
     *
     * @param layerGrams organic layer, g, 0 or more
     * @param layerMillilitres organic layer, mL, 0 or more
     * @param waterMassPercent water in the saturated solvent, mass %, 0 to 100
     * @param dropsMillilitresPerMillilitre water carried over as drops, mL per mL of layer, 0 or more; after a brine wash 0 (common practice)
     * @return g
     * @throws IllegalArgumentException if out of range
     */
    public static double waterToBindGrams(
            double layerGrams, double layerMillilitres, double waterMassPercent, double dropsMillilitresPerMillilitre) {
        Require.notNegative(layerGrams, "layer mass");
        Require.notNegative(layerMillilitres, "layer volume");
        if (!(waterMassPercent >= 0 && waterMassPercent <= 100)) {
            throw new IllegalArgumentException("water in solvent " + waterMassPercent + " %");
        }
        Require.notNegative(dropsMillilitresPerMillilitre, "drops");
        double drops = layerMillilitres * dropsMillilitresPerMillilitre * WATER_GRAMS_PER_MILLILITRE;
        return layerGrams * waterMassPercent / 100 + drops;
    }

    /**
     * Agent needed, m = factor·water/capacity.
     *
     * @param waterGrams g, 0 or more
     * @param uptakeGramsPerGram water per agent, g/g, above 0
     * @param excessFactor 1 or more; 1.5 to 2 is common practice
     * @return g
     * @throws IllegalArgumentException if out of range
     */
    public static double agentGrams(double waterGrams, double uptakeGramsPerGram, double excessFactor) {
        if (!(excessFactor >= 1)) {
            throw new IllegalArgumentException("factor " + excessFactor);
        }
        return excessFactor * Require.notNegative(waterGrams, "water") / Require.positive(uptakeGramsPerGram, "uptake");
    }

    /**
     * A low and a high end.
     *
     * @param low lower end
     * @param high upper end, not below {@code low}
     */
    public record Range(double low, double high) {
        /** Checks the order. */
        public Range {
            if (!(low <= high)) {
                throw new IllegalArgumentException("range " + low + " to " + high);
            }
        }

        /** The middle, for an account that needs one figure. */
        public double middle() {
            return (low + high) / 2;
        }

        /** Both ends times a factor of 0 or more. */
        public Range times(double factor) {
            return new Range(low * factor, high * factor);
        }
    }

    /**
     * Solution on a drying-agent cake, held = cake − agent − water; the water taken up is between none and all of {@code mostWaterGrams},
     * so the answer is a range.
     *
     * @param wetCakeGrams g, 0 or more
     * @param agentGrams dry agent, g, 0 or more
     * @param mostWaterGrams most water the agent can have bound, g, 0 or more
     * @return g, never below 0
     * @throws IllegalArgumentException if out of range
     */
    public static Range solutionOnCakeGrams(double wetCakeGrams, double agentGrams, double mostWaterGrams) {
        double gain = Require.notNegative(wetCakeGrams, "cake") - Require.notNegative(agentGrams, "agent");
        double driest = gain - Require.notNegative(mostWaterGrams, "water");
        return new Range(Math.max(0, driest), Math.max(0, gain));
    }

    /**
     * Product on a drying-agent cake: the solution on it times what of that is product.
     *
     * @param wetCakeGrams g, 0 or more
     * @param agentGrams dry agent, g, 0 or more
     * @param mostWaterGrams most water the agent can have bound, g, 0 or more
     * @param productMassFraction of the solution that was filtered, 0 to 1
     * @param keptFraction share still on the cake after rinsing, 0 to 1; 1 when not rinsed
     * @return g, never below 0
     * @throws IllegalArgumentException if out of range
     */
    public static Range productOnCakeGrams(
            double wetCakeGrams,
            double agentGrams,
            double mostWaterGrams,
            double productMassFraction,
            double keptFraction) {
        if (!(productMassFraction >= 0 && productMassFraction <= 1 && keptFraction >= 0 && keptFraction <= 1)) {
            throw new IllegalArgumentException("fractions " + productMassFraction + ", " + keptFraction);
        }
        return solutionOnCakeGrams(wetCakeGrams, agentGrams, mostWaterGrams).times(productMassFraction * keptFraction);
    }
}
