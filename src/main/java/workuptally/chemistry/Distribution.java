package workuptally.chemistry;

import java.util.List;

/**
 * Distribution ratio D = c(organic)/c(aqueous) of all forms of a substance, from the partition ratio P of its uncharged form.
 *
 * <p>Equilibrium pH; constants in water at 25 °C, which co-solvent and salt move; dilute, no dimers in the organic layer, no third phase.
 * Ions go over as pairs: D is not let fall below P·10⁻⁴ (memory). A P from another solvent is a guide within a factor of three, from octanol
 * within ten (common practice).
 */
public final class Distribution {
    /** Share of P below which D does not fall, dimensionless. Source: memory, rule of thumb for ion pairs. */
    public static final double ION_PAIR_FLOOR = 1e-4;

    private Distribution() {}

    /**
     * D of a neutral substance, which is P.
     *
     * @param partitionRatio P, above 0
     * @throws IllegalArgumentException if P is not positive
     */
    public static double neutral(double partitionRatio) {
        return Require.positive(partitionRatio, "partition ratio");
    }

    /**
     * D of an acid with one or more protons, D = P / (1 + 10^(pH−pKa₁) + 10^(2pH−pKa₁−pKa₂) + …).
     *
     * @param partitionRatio P of the uncharged acid, above 0
     * @param pKa constants in rising order, at least one
     * @param pH of the aqueous layer at equilibrium
     * @return D, at least P·10⁻⁴
     * @throws IllegalArgumentException if P is not positive or no constant is given
     */
    public static double acid(double partitionRatio, List<Double> pKa, double pH) {
        return limited(partitionRatio, 1 + chargedForms(pKa, pH, 1));
    }

    /**
     * D of a base with one or more basic sites, D = P / (1 + 10^(pKa₁−pH) + 10^(pKa₁+pKa₂−2pH) + …).
     *
     * @param partitionRatio P of the free base, above 0
     * @param pKa constants of the conjugate acids, the strongest base (highest) first, at least one
     * @param pH of the aqueous layer at equilibrium
     * @return D, at least P·10⁻⁴
     * @throws IllegalArgumentException if P is not positive or no constant is given
     */
    public static double base(double partitionRatio, List<Double> pKa, double pH) {
        return limited(partitionRatio, 1 + chargedForms(pKa, pH, -1));
    }

    private static double chargedForms(List<Double> pKa, double pH, int sign) {
        if (pKa.isEmpty()) {
            throw new IllegalArgumentException("no pKa given");
        }
        double exponent = 0;
        double sum = 0;
        for (double constant : pKa) {
            exponent += sign * (Require.finite(pH, "pH") - Require.finite(constant, "pKa"));
            sum += Math.pow(10, exponent);
        }
        return sum;
    }

    private static double limited(double partitionRatio, double divisor) {
        Require.positive(partitionRatio, "partition ratio");
        return partitionRatio * Math.max(1 / divisor, ION_PAIR_FLOOR);
    }
}
