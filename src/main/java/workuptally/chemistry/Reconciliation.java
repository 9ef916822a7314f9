package workuptally.chemistry;

import java.util.Arrays;

/**
 * Measurements brought into agreement with linear balances by the smallest adjustment, weighed by their variances.
 *
 * <p>Minimises Σ (aᵢ/uᵢ)² over adjustments a with A·a = −r, r the imbalance of each balance with the measurements as they are: a =
 * −V·Aᵀ·(A·V·Aᵀ)⁻¹·r, variance of the adjusted values V − V·Aᵀ·(A·V·Aᵀ)⁻¹·A·V. Measurement test for a gross error: zᵢ = |aᵢ| over its
 * standard deviation, the root of the i-th diagonal element of V·Aᵀ·(A·V·Aᵀ)⁻¹·A·V. Source: Narasimhan and Jordache, Data Reconciliation
 * and Gross Error Detection, Gulf 2000, chapters 3 and 7; Mah and Tamhane, AIChE Journal 28 (1982) 828. Independent measurements; balances
 * that are linear near the measurements. Where two balances say the same, one of them is passed over.
 */
public final class Reconciliation {
    /** A pivot that falls below this part of its diagonal belongs to a balance that the others imply. */
    private static final double IMPLIED = 1e-10;

    private final double[] standardUncertainty;
    private final double[][] balances;
    private final double[] imbalance;
    /** Lower Cholesky factor of A·V·Aᵀ; a row of zeros for a balance that is passed over. */
    private final double[][] factor;

    /**
     * The balances of some measurements.
     *
     * @param standardUncertainty u of each measurement, above 0
     * @param balances coefficients of each measurement in each balance, a row for each balance
     * @param imbalance each balance with the measurements as they are
     * @throws IllegalArgumentException if the sizes do not fit, or a number is not finite or an uncertainty not above 0
     */
    public Reconciliation(double[] standardUncertainty, double[][] balances, double[] imbalance) {
        if (balances.length != imbalance.length
                || Arrays.stream(balances).anyMatch(row -> row.length != standardUncertainty.length)) {
            throw new IllegalArgumentException("balances and measurements do not fit");
        }
        boolean known = Arrays.stream(standardUncertainty).allMatch(u -> u > 0 && Double.isFinite(u))
                && Arrays.stream(imbalance).allMatch(Double::isFinite)
                && Arrays.stream(balances).flatMapToDouble(Arrays::stream).allMatch(Double::isFinite);
        if (!known) {
            throw new IllegalArgumentException("a number is not finite, or an uncertainty not above 0");
        }
        this.standardUncertainty = standardUncertainty.clone();
        this.balances = Arrays.stream(balances).map(double[]::clone).toArray(double[][]::new);
        this.imbalance = imbalance.clone();
        this.factor = factor();
    }

    private double covariance(int one, int other) {
        double sum = 0;
        for (int i = 0; i < standardUncertainty.length; i++) {
            sum += balances[one][i] * standardUncertainty[i] * standardUncertainty[i] * balances[other][i];
        }
        return sum;
    }

    private double[][] factor() {
        int count = balances.length;
        double[][] lower = new double[count][count];
        for (int i = 0; i < count; i++) {
            double diagonal = covariance(i, i);
            double rest = diagonal;
            for (int j = 0; j < i; j++) {
                double sum = covariance(i, j);
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = lower[j][j] == 0 ? 0 : sum / lower[j][j];
                rest -= lower[i][j] * lower[i][j];
            }
            if (rest > IMPLIED * diagonal) {
                lower[i][i] = Math.sqrt(rest);
            } else {
                Arrays.fill(lower[i], 0);
            }
        }
        return lower;
    }

    /** L⁻¹·v, 0 for balances passed over. */
    private double[] forward(double[] v) {
        double[] solved = new double[v.length];
        for (int i = 0; i < v.length; i++) {
            double sum = v[i];
            for (int j = 0; j < i; j++) {
                sum -= factor[i][j] * solved[j];
            }
            solved[i] = factor[i][i] == 0 ? 0 : sum / factor[i][i];
        }
        return solved;
    }

    /** L⁻¹·A·V column of a measurement: what the balances know of it. */
    private double[] known(int measurement) {
        double variance = standardUncertainty[measurement] * standardUncertainty[measurement];
        return forward(Arrays.stream(balances)
                .mapToDouble(row -> row[measurement] * variance)
                .toArray());
    }

    /** What is added to each measurement, in its unit. */
    public double[] adjustments() {
        double[] scaled = forward(imbalance);
        double[] adjustments = new double[standardUncertainty.length];
        for (int i = 0; i < adjustments.length; i++) {
            double[] known = known(i);
            for (int k = 0; k < known.length; k++) {
                adjustments[i] -= known[k] * scaled[k];
            }
        }
        return adjustments;
    }

    /** Standard uncertainty of each adjusted value, no larger than that of the measurement. */
    public double[] adjustedStandardUncertainties() {
        double[] all = new double[standardUncertainty.length];
        for (int i = 0; i < all.length; i++) {
            double variance = standardUncertainty[i] * standardUncertainty[i];
            all[i] = Math.sqrt(Math.max(0, variance - squared(known(i))));
        }
        return all;
    }

    /** Each adjustment over its standard deviation, without its sign; 0 for a measurement that no balance tells anything of. */
    public double[] standardisedAdjustments() {
        double[] adjustments = adjustments();
        double[] all = new double[adjustments.length];
        for (int i = 0; i < all.length; i++) {
            double deviation = Math.sqrt(squared(known(i)));
            all[i] = deviation == 0 ? 0 : Math.abs(adjustments[i]) / deviation;
        }
        return all;
    }

    /** Global test, rᵀ·(A·V·Aᵀ)⁻¹·r: chi-square distributed, with {@link #degreesOfFreedom()}, where no gross error is there. */
    public double chiSquare() {
        return squared(forward(imbalance));
    }

    /** Balances that were not passed over. */
    public int degreesOfFreedom() {
        int count = 0;
        for (int i = 0; i < factor.length; i++) {
            count += factor[i][i] > 0 ? 1 : 0;
        }
        return count;
    }

    private static double squared(double[] v) {
        return Arrays.stream(v).map(x -> x * x).sum();
    }
}
