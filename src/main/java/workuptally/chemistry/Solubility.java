package workuptally.chemistry;

/**
 * Solubility of an acid or base by pH, as an upper bound on what a layer can hold.
 *
 * <p>Holds until the salt itself reaches its own solubility; constants in water at 25 °C. Source: Henderson and Hasselbalch, textbook.
 */
public final class Solubility {
    private Solubility() {}

    /**
     * S = S₀·(1 + 10^(pH − pKa)) of an acid.
     *
     * @param uncharged S₀ of the free acid, any unit, 0 or more
     * @throws IllegalArgumentException if out of range
     */
    public static double acid(double uncharged, double pKa, double pH) {
        return Require.notNegative(uncharged, "solubility") * (1 + Math.pow(10, Require.finite(pH - pKa, "pH - pKa")));
    }

    /**
     * S = S₀·(1 + 10^(pKa − pH)) of a base.
     *
     * @param uncharged S₀ of the free base, any unit, 0 or more
     * @param pKa of the conjugate acid
     * @throws IllegalArgumentException if out of range
     */
    public static double base(double uncharged, double pKa, double pH) {
        return acid(uncharged, pH, pKa);
    }

    /**
     * Most that a layer can hold dissolved, m ≤ V·S.
     *
     * @param volumeMillilitres V, mL, 0 or more
     * @param solubilityMilligramsPerMillilitre S, mg/mL, 0 or more
     * @return g
     * @throws IllegalArgumentException if out of range
     */
    public static double boundGrams(double volumeMillilitres, double solubilityMilligramsPerMillilitre) {
        return Require.notNegative(volumeMillilitres, "volume")
                * Require.notNegative(solubilityMilligramsPerMillilitre, "solubility")
                / 1000;
    }
}
