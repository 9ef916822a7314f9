package workuptally.measure;

/**
 * Factor of the one-sided statistical tolerance limit x̄ + k·s of a normal population whose mean and standard deviation are estimated from
 * n values: with the stated confidence at least the stated share of the population lies below the limit.
 *
 * <p>k = t(γ; n − 1, δ)/√n, the quantile of the non-central Student distribution with δ = z(p)·√n. Source: ISO 16269-6:2014, annex on
 * one-sided intervals with unknown standard deviation.
 */
public final class ToleranceFactor {
    private ToleranceFactor() {}

    /**
     * The factor k.
     *
     * @param count number of values n, 2 or more
     * @param share p, the share of the population, 0.5 or more and below 1
     * @param confidence γ, 0.5 or more and below 1
     * @throws IllegalArgumentException if out of range
     */
    public static double oneSided(int count, double share, double confidence) {
        if (count < 2 || !(share >= 0.5 && share < 1)) {
            throw new IllegalArgumentException("n " + count + ", share " + share);
        }
        double root = Math.sqrt(count);
        return StudentDistribution.quantile(confidence, count - 1, NormalDistribution.quantile(share) * root) / root;
    }
}
