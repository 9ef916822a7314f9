package workuptally.chemistry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Mean, spread and outliers of repeated results. */
public final class Statistics {
    /** Factor that makes the median absolute deviation of a normal distribution its standard deviation. Source: 1/Φ⁻¹(0.75) = 1.4826. */
    public static final double MAD_TO_STANDARD_DEVIATION = 1.4826;

    /** Modified z-score above which a value counts as an outlier. Source: Iglewicz and Hoaglin, 1993, from memory. */
    public static final double OUTLIER_SCORE = 3.5;

    private Statistics() {}

    /**
     * Arithmetic mean; the deviations from a first mean are averaged and added, which keeps the digits of large numbers.
     *
     * @param values at least one
     * @throws IllegalArgumentException if empty or not finite
     */
    public static double mean(List<Double> values) {
        double first = values.stream().mapToDouble(Double::doubleValue).sum() / sized(values, 1);
        double correction = values.stream().mapToDouble(value -> value - first).sum() / values.size();
        return first + correction;
    }

    /**
     * Standard deviation with n − 1, in two passes with the correction for the rounding of the mean.
     *
     * @param values at least two
     * @throws IllegalArgumentException if fewer or not finite
     */
    public static double standardDeviation(List<Double> values) {
        sized(values, 2);
        double mean = mean(values);
        double squares = 0;
        double sum = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
            sum += value - mean;
        }
        return Math.sqrt((squares - sum * sum / values.size()) / (values.size() - 1));
    }

    /**
     * Median: the middle value, or the mean of the two middle ones.
     *
     * @param values at least one
     * @throws IllegalArgumentException if empty or not finite
     */
    public static double median(List<Double> values) {
        sized(values, 1);
        double[] sorted =
                values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    /** Median of the absolute deviations from the median. */
    public static double medianAbsoluteDeviation(List<Double> values) {
        double middle = median(values);
        return median(values.stream().map(value -> Math.abs(value - middle)).toList());
    }

    /** Robust spread, 1.4826 times the median absolute deviation; equals the standard deviation for a normal distribution. */
    public static double robustSpread(List<Double> values) {
        return MAD_TO_STANDARD_DEVIATION * medianAbsoluteDeviation(values);
    }

    /**
     * Places of the outliers: |x − median| above 3.5 robust spreads.
     *
     * <p>Where more than half the values are equal the spread is 0 and nothing is called an outlier.
     *
     * @param values at least one
     * @return indices from 0, in order
     */
    public static List<Integer> outliers(List<Double> values) {
        double middle = median(values);
        double spread = robustSpread(values);
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            if (spread > 0 && Math.abs(values.get(i) - middle) > OUTLIER_SCORE * spread) {
                found.add(i);
            }
        }
        return List.copyOf(found);
    }

    static int sized(List<Double> values, int least) {
        if (values.size() < least) {
            throw new IllegalArgumentException("needs at least " + least + " values, got " + values.size());
        }
        double[] plain = values.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.stream(plain).forEach(value -> Require.finite(value, "value"));
        return plain.length;
    }
}
