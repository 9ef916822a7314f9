package workuptally.measure;

/**
 * Student's distribution, central and non-central: the value t = (z + δ)/√(χ²/ν) with a standard normal z and, independent of it, a χ² with
 * ν degrees of freedom.
 *
 * <p>P(T ≤ t) = ∫ Φ(t·s − δ) f(s) ds over the density f of s = √(χ²/ν), by Simpson's rule. That is slower than the known series and needs
 * no more than the normal distribution; a factor is asked for a few times a review. Agrees with tables to 1e-6 for ν from 1 to 1000.
 */
final class StudentDistribution {
    /** Standard deviations of s, about 1/√(2ν), that the integral goes to either side of 1. */
    private static final double REACH = 9;

    private static final int STEPS = 600;
    private static final int HALVINGS = 60;
    /** Above this the distribution is the normal one to four digits. */
    private static final double MOST_DEGREES = 1e5;

    private StudentDistribution() {}

    /**
     * The quantile of the central distribution.
     *
     * @param probability 0.5 or more and below 1
     * @param degreesOfFreedom ν, at least 1; infinity for the normal distribution
     * @throws IllegalArgumentException if out of range
     */
    static double quantile(double probability, double degreesOfFreedom) {
        return quantile(probability, degreesOfFreedom, 0);
    }

    /**
     * The quantile of the non-central distribution.
     *
     * @param probability 0.5 or more and below 1
     * @param degreesOfFreedom ν, at least 1; infinity for the normal distribution
     * @param noncentrality δ, 0 or more
     * @throws IllegalArgumentException if out of range
     */
    static double quantile(double probability, double degreesOfFreedom, double noncentrality) {
        if (!(probability >= 0.5 && probability < 1) || !(degreesOfFreedom >= 1) || !(noncentrality >= 0)) {
            throw new IllegalArgumentException(
                    "p " + probability + ", degrees of freedom " + degreesOfFreedom + ", δ " + noncentrality);
        }
        if (degreesOfFreedom > MOST_DEGREES) {
            return NormalDistribution.quantile(probability) + noncentrality;
        }
        double high = 1;
        while (probabilityBelow(high, degreesOfFreedom, noncentrality) < probability) {
            high *= 2;
        }
        double low = 0;
        for (int i = 0; i < HALVINGS && high - low > 1e-10 * high; i++) {
            double middle = (low + high) / 2;
            if (probabilityBelow(middle, degreesOfFreedom, noncentrality) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double probabilityBelow(double t, double degreesOfFreedom, double noncentrality) {
        double spread = REACH / Math.sqrt(2 * degreesOfFreedom);
        double from = Math.max(0, 1 - spread);
        double step = (1 + spread - from) / STEPS;
        double sum = 0;
        double weights = 0;
        for (int i = 0; i <= STEPS; i++) {
            double s = from + i * step;
            double weight = (i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2) * density(s, degreesOfFreedom);
            sum += weight * NormalDistribution.probabilityBelow(t * s - noncentrality);
            weights += weight;
        }
        return sum / weights;
    }

    /** Density of s = √(χ²/ν) but for a constant, which the sum of the weights takes out. */
    private static double density(double s, double degreesOfFreedom) {
        double power = degreesOfFreedom - 1;
        double logarithm = (power == 0 ? 0 : power * Math.log(s)) - degreesOfFreedom * (s * s - 1) / 2;
        return Math.exp(logarithm);
    }
}
