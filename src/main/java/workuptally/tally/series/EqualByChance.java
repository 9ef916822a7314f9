package workuptally.tally.series;

import java.util.List;

/**
 * Whether equal masses are to be expected among some that nobody copied: of n masses that scatter normally with s, n(n − 1)/2 pairs agree to
 * the last digit d with d/(2·√π·s) each, the density of their difference at zero. Sixty students who weigh to 1 mg and scatter by 0.2 g have
 * two or three such pairs.
 */
public final class EqualByChance {
    /** Expected pairs from which an equal pair is no sign. */
    private static final double TOO_MANY = 0.1;

    /** Decimals of the finest balance. */
    private static final int MOST_DECIMALS = 5;

    private final List<Double> massesGrams;

    /** @param massesGrams masses of one kind of portion, g */
    public EqualByChance(List<Double> massesGrams) {
        this.massesGrams = List.copyOf(massesGrams);
    }

    /** True where an equal pair says nothing. */
    public boolean isLikely() {
        return expectedPairs() > TOO_MANY;
    }

    /** Number of pairs that agree by chance; 0 for fewer than three masses, whose scatter is not known. */
    double expectedPairs() {
        int count = massesGrams.size();
        double scatter = standardDeviation();
        if (count < 3 || scatter == 0) {
            return 0;
        }
        return count * (count - 1) / 2.0 * lastDigitGrams() / (2 * Math.sqrt(Math.PI) * scatter);
    }

    private double standardDeviation() {
        double mean = massesGrams.stream().mapToDouble(m -> m).average().orElse(0);
        double squares =
                massesGrams.stream().mapToDouble(m -> (m - mean) * (m - mean)).sum();
        return massesGrams.size() < 2 ? 0 : Math.sqrt(squares / (massesGrams.size() - 1));
    }

    private double lastDigitGrams() {
        for (int decimals = 0; decimals < MOST_DECIMALS; decimals++) {
            double scale = Math.pow(10, decimals);
            if (massesGrams.stream().allMatch(m -> Math.abs(m * scale - Math.rint(m * scale)) < 1e-6 * scale)) {
                return 1 / scale;
            }
        }
        return Math.pow(10, -MOST_DECIMALS);
    }
}
