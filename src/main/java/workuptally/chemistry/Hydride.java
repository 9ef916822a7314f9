package workuptally.chemistry;

import java.util.Optional;

/** Hydride reagents and the hydrogen a quench can set free. Hydridic hydrogens by stoichiometry; common practice. */
public enum Hydride {
    /** Sodium hydride. */
    SODIUM_HYDRIDE("NaH", 1),
    /** Potassium hydride. */
    POTASSIUM_HYDRIDE("KH", 1),
    /** Lithium hydride. */
    LITHIUM_HYDRIDE("LiH", 1),
    /** Calcium hydride. */
    CALCIUM_HYDRIDE("CaH2", 2),
    /** Sodium borohydride. */
    SODIUM_BOROHYDRIDE("NaBH4", 4),
    /** Lithium borohydride. */
    LITHIUM_BOROHYDRIDE("LiBH4", 4),
    /** Potassium borohydride. */
    POTASSIUM_BOROHYDRIDE("KBH4", 4),
    /** Sodium cyanoborohydride. */
    SODIUM_CYANOBOROHYDRIDE("NaBH3CN", 3),
    /** Sodium triacetoxyborohydride. */
    SODIUM_TRIACETOXYBOROHYDRIDE("C6H10BNaO6", 1),
    /** Lithium aluminium hydride. */
    LITHIUM_ALUMINIUM_HYDRIDE("LiAlH4", 4),
    /** Diisobutylaluminium hydride. */
    DIISOBUTYLALUMINIUM_HYDRIDE("C8H19Al", 1),
    /** Sodium bis(2-methoxyethoxy)aluminium dihydride. */
    SODIUM_BISMETHOXYETHOXY_ALUMINIUM_HYDRIDE("C6H16AlNaO4", 2),
    /** Borane, also as complex with THF. */
    BORANE("BH3", 3),
    /** Borane with tetrahydrofuran. */
    BORANE_TETRAHYDROFURAN("C4H11BO", 3),
    /** Borane with dimethyl sulfide. */
    BORANE_DIMETHYL_SULFIDE("C2H9BS", 3),
    /** Lithium tri-sec-butylborohydride. */
    LITHIUM_TRIBUTYLBOROHYDRIDE("C12H28BLi", 1),
    /** Lithium triethylborohydride. */
    LITHIUM_TRIETHYLBOROHYDRIDE("C6H16BLi", 1);

    private final Formula formula;
    private final int equivalentsPerMole;

    Hydride(String formula, int equivalentsPerMole) {
        this.formula = Formula.parse(formula);
        this.equivalentsPerMole = equivalentsPerMole;
    }

    /** Hydridic hydrogens in one formula unit; each gives one H₂ with water, alcohol or acid. */
    public int equivalentsPerMole() {
        return equivalentsPerMole;
    }

    /** The hydride with a formula, however written. */
    public static Optional<Hydride> of(Formula formula) {
        for (Hydride hydride : values()) {
            if (hydride.formula.sameComposition(formula)) {
                return Optional.of(hydride);
            }
        }
        return Optional.empty();
    }

    /**
     * Hydrogen that a quench can set free, n(H₂) = n·equivalents − consumed, not below 0.
     *
     * @param chargedMillimoles reagent charged, mmol, 0 or more
     * @param consumedMillimoles hydride consumed by the reaction, mmol, 0 or more; 0 gives the worst case
     * @return mmol
     * @throws IllegalArgumentException if out of range
     */
    public double hydrogenMillimoles(double chargedMillimoles, double consumedMillimoles) {
        double charged = Require.notNegative(chargedMillimoles, "charged") * equivalentsPerMole;
        return Math.max(0, charged - Require.notNegative(consumedMillimoles, "consumed"));
    }
}
