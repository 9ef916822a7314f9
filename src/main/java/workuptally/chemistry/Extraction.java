package workuptally.chemistry;

/**
 * Repeated extraction of an aqueous layer with organic solvent, at constant distribution ratio D = c(organic)/c(aqueous), immiscible layers
 * and equilibrium in every contact. Source: mass balance and the definition of D, any analytical chemistry text.
 */
public final class Extraction {
    /** More portions than this are not proposed; common practice stops long before. */
    private static final int MOST_PORTIONS = 100;

    private Extraction() {}

    /**
     * Share left in the aqueous layer after n equal portions, q = (1 + D·Vo/Va)^(−n).
     *
     * @param distributionRatio D, 0 or more
     * @param organicMillilitres Vo, each portion, mL, 0 or more
     * @param aqueousMillilitres Va, mL, above 0
     * @param portions n, 1 or more
     * @return 0 to 1
     * @throws IllegalArgumentException if out of range
     */
    public static double fractionLeft(
            double distributionRatio, double organicMillilitres, double aqueousMillilitres, int portions) {
        double factor = factor(distributionRatio, organicMillilitres, aqueousMillilitres);
        return Math.pow(1 + factor, -Require.atLeastOne(portions, "portions"));
    }

    /**
     * Fewest equal portions of a fixed total volume after which one portion more would gain less than a share of the substance.
     *
     * <p>Equal portions are the best split of a fixed volume; more of them always gain, but ever less.
     *
     * @param distributionRatio D, 0 or more
     * @param totalOrganicMillilitres mL, 0 or more
     * @param aqueousMillilitres mL, above 0
     * @param smallestGainFraction gain that is still worth a portion, above 0, for example 0.01
     * @return 1 to 100
     * @throws IllegalArgumentException if out of range
     */
    public static int bestSplit(
            double distributionRatio,
            double totalOrganicMillilitres,
            double aqueousMillilitres,
            double smallestGainFraction) {
        Require.positive(smallestGainFraction, "smallest gain");
        double left = fractionLeft(distributionRatio, totalOrganicMillilitres, aqueousMillilitres, 1);
        for (int n = 1; n < MOST_PORTIONS; n++) {
            double next = fractionLeft(distributionRatio, totalOrganicMillilitres / (n + 1), aqueousMillilitres, n + 1);
            if (left - next < smallestGainFraction) {
                return n;
            }
            left = next;
        }
        return MOST_PORTIONS;
    }

    /**
     * What n further portions would take from a layer, gain = m·(1 − (1 + D·VE/Vl)^(−n)).
     *
     * @param massGrams m in the layer, g, 0 or more
     * @param distributionRatio D, 0 or more
     * @param portionMillilitres VE, mL, 0 or more
     * @param layerMillilitres Vl, mL, above 0
     * @param portions n, 1 or more
     * @return g
     * @throws IllegalArgumentException if out of range
     */
    public static double gainGrams(
            double massGrams,
            double distributionRatio,
            double portionMillilitres,
            double layerMillilitres,
            int portions) {
        return Require.notNegative(massGrams, "mass")
                * (1 - fractionLeft(distributionRatio, portionMillilitres, layerMillilitres, portions));
    }

    private static double factor(double distributionRatio, double organicMillilitres, double aqueousMillilitres) {
        return Require.notNegative(distributionRatio, "distribution ratio")
                * Require.notNegative(organicMillilitres, "organic volume")
                / Require.positive(aqueousMillilitres, "aqueous volume");
    }
}
