package workuptally.chemistry;

import java.util.List;

/** Accounts of acid and base in a workup: capacity of a wash, carbon dioxide, and the salt left by the charge balance. */
public final class AcidBase {
    /** Ion product of water at 25 °C as pKw. Source: textbook value 13.995, rounded. */
    public static final double WATER_ION_PRODUCT_PK = 14.0;

    /** The pH of water without acid and base at 25 °C, half of {@link #WATER_ION_PRODUCT_PK}; what is taken where no pH is known. */
    public static final double NEUTRAL_PH = WATER_ION_PRODUCT_PK / 2;

    private AcidBase() {}

    /**
     * How often a wash can neutralise what it meets, K = n(wash)/n(to neutralise).
     *
     * @param washMillimoles protons the wash gives or takes, mmol, 0 or more
     * @param toNeutraliseMillimoles mmol, above 0
     * @throws IllegalArgumentException if out of range
     */
    public static double capacityRatio(double washMillimoles, double toNeutraliseMillimoles) {
        return Require.notNegative(washMillimoles, "wash") / Require.positive(toNeutraliseMillimoles, "to neutralise");
    }

    /**
     * Salt of an acidic product left after acidification, n(A⁻) = n(strong base) − n(strong acid), not below 0.
     *
     * <p>By charge balance; carbonate, amines and phosphates must be absent, and {@link #chargeBalanceHolds} met. Source: electroneutrality.
     *
     * @param strongBaseMillimoles mmol, 0 or more
     * @param strongAcidMillimoles mmol, 0 or more
     * @return mmol
     * @throws IllegalArgumentException if out of range
     */
    public static double residualSaltMillimoles(double strongBaseMillimoles, double strongAcidMillimoles) {
        return Math.max(
                0,
                Require.notNegative(strongBaseMillimoles, "strong base")
                        - Require.notNegative(strongAcidMillimoles, "strong acid"));
    }

    /**
     * Whether free hydrogen and hydroxide ions are small, below a tenth, against the salt of a charge balance.
     *
     * @param saltMillimoles mmol, 0 or more
     * @param pH of the layer
     * @param volumeMillilitres mL, above 0
     * @throws IllegalArgumentException if out of range
     */
    public static boolean chargeBalanceHolds(double saltMillimoles, double pH, double volumeMillilitres) {
        double salt = Require.notNegative(saltMillimoles, "salt");
        double free = Math.max(hydrogenIonMolesPerLitre(pH), hydroxideIonMolesPerLitre(pH));
        return free * Require.positive(volumeMillilitres, "volume") < salt / 10;
    }

    /** [H⁺] = 10^(−pH), mol/L; activity taken as concentration. */
    public static double hydrogenIonMolesPerLitre(double pH) {
        return Math.pow(10, -Require.finite(pH, "pH"));
    }

    /** [OH⁻] = 10^(pH − 14), mol/L, at 25 °C. */
    public static double hydroxideIonMolesPerLitre(double pH) {
        return Math.pow(10, Require.finite(pH, "pH") - WATER_ION_PRODUCT_PK);
    }

    /**
     * Share of an acid present as its anion, 1/(1 + 10^(pKa − pH)), 0 to 1. Source: Henderson and Hasselbalch, textbook.
     *
     * @throws IllegalArgumentException if a value is not a number
     */
    public static double ionisedAcidFraction(double pKa, double pH) {
        return 1 / (1 + Math.pow(10, Require.finite(pKa - pH, "pKa - pH")));
    }

    /**
     * Protons that one molecule of an acid with several of them holds on average, from all of them far below pKa₁ to none far above the
     * last: Σ (n − j)·10^(j·pH − ΣpKaᵢ) / Σ 10^(j·pH − ΣpKaᵢ), i from 1 to j. Source: mass action, textbook.
     *
     * @param pKa constants in rising order, at least one
     * @param pH of the solution
     * @return 0 to the number of constants
     * @throws IllegalArgumentException if no constant is given or a value is not a number
     */
    public static double protonsBound(List<Double> pKa, double pH) {
        if (pKa.isEmpty()) {
            throw new IllegalArgumentException("no pKa given");
        }
        double exponent = 0;
        double bound = pKa.size();
        double forms = 1;
        for (int lost = 1; lost <= pKa.size(); lost++) {
            exponent += Require.finite(pH, "pH") - Require.finite(pKa.get(lost - 1), "pKa");
            bound += (pKa.size() - lost) * Math.pow(10, exponent);
            forms += Math.pow(10, exponent);
        }
        return bound / forms;
    }

    /**
     * Carbon dioxide when acid is added to carbonate and hydrogencarbonate: the first proton turns carbonate into hydrogencarbonate, so
     * n(CO₂) = min(max(n(acid) − n(CO₃), 0), n(CO₃) + n(HCO₃)).
     *
     * @param acidMillimoles protons of every acid present, mmol, 0 or more
     * @param carbonateMillimoles mmol, 0 or more
     * @param hydrogencarbonateMillimoles mmol, 0 or more
     * @return mmol
     * @throws IllegalArgumentException if out of range
     */
    public static double carbonDioxideMillimoles(
            double acidMillimoles, double carbonateMillimoles, double hydrogencarbonateMillimoles) {
        double carbonate = Require.notNegative(carbonateMillimoles, "carbonate");
        double hydrogencarbonate = Require.notNegative(hydrogencarbonateMillimoles, "hydrogencarbonate");
        double beyondFirst = Math.max(Require.notNegative(acidMillimoles, "acid") - carbonate, 0);
        return Math.min(beyondFirst, carbonate + hydrogencarbonate);
    }
}
