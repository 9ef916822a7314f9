package workuptally.measure;

/** The standard normal distribution. */
public final class NormalDistribution {
    /** Beyond this the probability in the tail is below 1e-300. */
    private static final double FARTHEST = 37;

    private static final double SERIES_BELOW = 2.5;
    private static final int TERMS = 200;
    private static final int HALVINGS = 200;

    private NormalDistribution() {}

    /**
     * Φ(z), the probability of a value below z: by the power series of the density near the middle, by Laplace's continued fraction in the
     * tails, to about 1e-14. Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11 and 26.2.14.
     *
     * @param z finite
     */
    public static double probabilityBelow(double z) {
        if (z > 0) {
            return 1 - probabilityBelow(-z);
        }
        double x = -z;
        if (x > FARTHEST) {
            return 0;
        }
        double density = Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
        if (x < SERIES_BELOW) {
            double term = x;
            double sum = x;
            for (int n = 1; n < TERMS && term > 0; n++) {
                term *= x * x / (2 * n + 1);
                sum += term;
            }
            return 0.5 - density * sum;
        }
        double fraction = 0;
        for (int n = TERMS; n > 0; n--) {
            fraction = n / (x + fraction);
        }
        return density / (x + fraction);
    }

    /**
     * The value z below which a share of the distribution lies, by halving an interval.
     *
     * @param probability above 0 and below 1
     * @throws IllegalArgumentException if out of range
     */
    public static double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability " + probability);
        }
        double low = -FARTHEST;
        double high = FARTHEST;
        for (int i = 0; i < HALVINGS && high - low > 1e-14 * Math.max(1, Math.abs(low)); i++) {
            double middle = (low + high) / 2;
            if (probabilityBelow(middle) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
