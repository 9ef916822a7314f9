package workuptally.chemistry;

/**
 * How far the volume of the layers can differ from the volume of the liquids that were put together.
 *
 * <p>Liquids that dissolve in each other shrink: 50 mL ethanol and 50 mL water make about 96.3 mL, and an ether or ester layer loses several
 * per cent to the water. What lies outside the allowance is a reading to look at, not a law broken. Allowance: common practice.
 */
public final class Contraction {
    /** Largest shrinkage that passes, % of the volume put in. Source: common practice. */
    public static final double MOST_SHRINKAGE_PERCENT = 12;

    /** Largest growth that passes, for the reading of cylinders, % of the volume put in. Source: common practice. */
    public static final double MOST_GROWTH_PERCENT = 5;

    private Contraction() {}

    /**
     * Change of volume on mixing, 100·(Vout − Vin)/Vin.
     *
     * @param inMillilitres Vin, sum before mixing, mL, above 0
     * @param outMillilitres Vout, mL, 0 or more
     * @return %, negative for shrinkage
     * @throws IllegalArgumentException if out of range
     */
    public static double changePercent(double inMillilitres, double outMillilitres) {
        return 100
                * (Require.notNegative(outMillilitres, "volume out") - Require.positive(inMillilitres, "volume in"))
                / inMillilitres;
    }

    /**
     * True for a change between 12 % less and 5 % more.
     *
     * @param changePercent change of volume, % of the volume put in
     */
    public static boolean isPlausible(double changePercent) {
        return changePercent >= -MOST_SHRINKAGE_PERCENT && changePercent <= MOST_GROWTH_PERCENT;
    }
}
