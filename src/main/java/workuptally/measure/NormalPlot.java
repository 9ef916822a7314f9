package workuptally.measure;

import java.util.List;

/**
 * How straight a few values lie on normal probability paper: the correlation of the ordered values with the normal quantiles of
 * (i − 3/8)/(n + 1/4). Below the critical value at 5 % a normal population is in doubt.
 *
 * <p>Source: T. A. Ryan and B. L. Joiner, Normal probability plots and tests for normality, 1976; plotting positions of Blom; critical
 * value by their approximation in n, from memory.
 */
public final class NormalPlot {
    private NormalPlot() {}

    /**
     * True where a normal population is in doubt at 5 %; values that are all the same are in doubt as well.
     *
     * @param values four or more
     * @throws IllegalArgumentException if fewer
     */
    public static boolean isDoubtful(List<Double> values) {
        return correlation(values) < critical(values.size());
    }

    /** The correlation, 0 to 1; 0 where the values do not differ. */
    static double correlation(List<Double> values) {
        int n = values.size();
        if (n < 4) {
            throw new IllegalArgumentException("n " + n);
        }
        double[] ordered =
                values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        double mean = values.stream().mapToDouble(Double::doubleValue).sum() / n;
        double product = 0;
        double squares = 0;
        double scores = 0;
        for (int i = 0; i < n; i++) {
            double score = NormalDistribution.quantile((i + 1 - 0.375) / (n + 0.25));
            product += score * (ordered[i] - mean);
            squares += (ordered[i] - mean) * (ordered[i] - mean);
            scores += score * score;
        }
        return squares == 0 ? 0 : product / Math.sqrt(squares * scores);
    }

    /** Critical value at 5 %, 1.0063 − 0.1288/√n − 0.6118/n + 1.3505/n². */
    static double critical(int n) {
        return 1.0063 - 0.1288 / Math.sqrt(n) - 0.6118 / n + 1.3505 / ((double) n * n);
    }
}
