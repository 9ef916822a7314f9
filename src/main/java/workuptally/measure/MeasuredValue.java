package workuptally.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A value with its standard uncertainty and the readings it depends on.
 *
 * <p>First-order propagation u(y)² = Σ (∂y/∂xᵢ)² u(xᵢ)² over the entered readings xᵢ, which are independent of each other; the
 * derivatives come from automatic differentiation, so a reading used twice is counted with its joint effect. Source: JCGM 100:2008,
 * 5.1.2. Valid while u is small against the curvature of the equation; bounds, not intervals, are used near zero.
 *
 * <p>It holds the readings that it depends on and no others, in two short arrays, since a large book keeps some hundred thousand values at
 * once; values that depend on the same readings share the array of their numbers.
 */
public final class MeasuredValue {
    /** One-sided 95 % quantile of the normal distribution. Source: JCGM 100:2008, G.3. */
    public static final double ONE_SIDED_95 = 1.645;

    /** Degrees of freedom that come out of a division as a whole number less its last digit are that number. */
    private static final double ROUNDING = 1e-6;

    private static final int[] NO_READINGS = {};
    private static final double[] NO_DERIVATIVES = {};
    private static final double[] BY_ITSELF = {1};

    private final Readings readings;
    private final double value;
    /** Numbers of the readings it depends on, ascending. */
    private final int[] numbers;

    /** Derivatives by these. */
    private final double[] derivatives;

    private MeasuredValue(Readings readings, double value, int[] numbers, double[] derivatives) {
        this.readings = readings;
        this.value = value;
        this.numbers = numbers;
        this.derivatives = derivatives;
    }

    /** A number that depends on no reading. */
    static MeasuredValue exact(Readings readings, double value) {
        return new MeasuredValue(readings, value, NO_READINGS, NO_DERIVATIVES);
    }

    /**
     * A reading.
     *
     * @param number an array of one number, the number of the reading
     */
    static MeasuredValue entered(Readings readings, double value, int[] number) {
        return new MeasuredValue(readings, value, number, BY_ITSELF);
    }

    /** The value, in the unit its holder names. */
    public double value() {
        return value;
    }

    /** The standard uncertainty (k = 1), in the unit of the value; 0 or more. */
    public double standardUncertainty() {
        double variance = 0;
        for (int i = 0; i < numbers.length; i++) {
            double part = derivatives[i] * readings.reading(numbers[i]).standardUncertainty();
            variance += part * part;
        }
        return Math.sqrt(variance);
    }

    /**
     * Effective degrees of freedom of the standard uncertainty, νeff = u⁴ / Σ (uᵢ⁴/νᵢ) over the parts uᵢ = |∂y/∂xᵢ|·u(xᵢ); infinity
     * where every part is well known. Source: Welch–Satterthwaite formula, JCGM 100:2008, G.4.1.
     */
    public double effectiveDegreesOfFreedom() {
        double variance = 0;
        double sum = 0;
        for (int i = 0; i < numbers.length; i++) {
            Reading reading = readings.reading(numbers[i]);
            double part = derivatives[i] * reading.standardUncertainty();
            variance += part * part;
            sum += part * part * part * part / reading.degreesOfFreedom();
        }
        return sum > 0 ? variance * variance / sum : Double.POSITIVE_INFINITY;
    }

    /**
     * The coverage factor that holds the level of confidence of a factor k for the normal distribution: k itself where u is well known,
     * else the quantile of Student's distribution for νeff, truncated to the next lower whole number and at least 1. Source: JCGM
     * 100:2008, G.4.1 and G.6.4.
     *
     * @param coverageFactor k, above 0
     */
    public double coverageFactor(double coverageFactor) {
        double degrees = effectiveDegreesOfFreedom();
        return Double.isInfinite(degrees)
                ? coverageFactor
                : StudentDistribution.quantile(
                        NormalDistribution.probabilityBelow(coverageFactor),
                        Math.max(1, Math.floor(degrees + ROUNDING)));
    }

    /**
     * The expanded uncertainty U = k·u, with the factor of {@link #coverageFactor(double)} where few repeats stand behind u.
     *
     * @param coverageFactor k for a well-known u, above 0
     */
    public double expandedUncertainty(double coverageFactor) {
        return coverageFactor(coverageFactor) * standardUncertainty();
    }

    /** How far a one-sided 95 % bound lies from the value: 1.645·u where u is well known, else by Student's distribution. */
    public double oneSidedReach() {
        return coverageFactor(ONE_SIDED_95) * standardUncertainty();
    }

    /** The value plus its one-sided 95 % reach. */
    public double oneSidedUpperBound() {
        return value + oneSidedReach();
    }

    /** Relative standard uncertainty u/|y|; 0 when the value is 0. */
    public double relativeStandardUncertainty() {
        return value == 0 ? 0 : standardUncertainty() / Math.abs(value);
    }

    /** The readings this value depends on, the largest share of variance first; ties in order of entry. */
    public List<Contribution> budget() {
        double u = standardUncertainty();
        List<Contribution> parts = new ArrayList<>();
        for (int i = 0; i < numbers.length; i++) {
            double sensitivity = derivatives[i];
            if (sensitivity != 0) {
                Reading reading = readings.reading(numbers[i]);
                double part = sensitivity * reading.standardUncertainty();
                parts.add(new Contribution(reading, sensitivity, u == 0 ? 0 : 100 * part * part / (u * u)));
            }
        }
        parts.sort(Comparator.comparingDouble(Contribution::variancePercent).reversed());
        return List.copyOf(parts);
    }

    /** Sum; both values belong to the same {@link Readings}. */
    public MeasuredValue plus(MeasuredValue other) {
        return combined(value + other.value, 1, other, 1);
    }

    /** Difference; both values belong to the same {@link Readings}. */
    public MeasuredValue minus(MeasuredValue other) {
        return combined(value - other.value, 1, other, -1);
    }

    /** Product; both values belong to the same {@link Readings}. */
    public MeasuredValue times(MeasuredValue other) {
        return combined(value * other.value, other.value, other, value);
    }

    /** Product with an exact number. */
    public MeasuredValue times(double factor) {
        return scaled(value * factor, factor);
    }

    /**
     * Quotient; both values belong to the same {@link Readings}.
     *
     * @throws ArithmeticException if the divisor is 0
     */
    public MeasuredValue over(MeasuredValue divisor) {
        if (divisor.value == 0) {
            throw new ArithmeticException("division by a value of 0");
        }
        double quotient = value / divisor.value;
        double[] divided = new double[derivatives.length];
        for (int i = 0; i < divided.length; i++) {
            divided[i] = derivatives[i] / divisor.value;
        }
        return new MeasuredValue(readings, quotient, numbers, divided)
                .combined(quotient, 1, divisor, -quotient / divisor.value);
    }

    /**
     * Quotient with an exact number.
     *
     * @throws ArithmeticException if the divisor is 0
     */
    public MeasuredValue over(double divisor) {
        if (divisor == 0) {
            throw new ArithmeticException("division by 0");
        }
        return scaled(value / divisor, 1 / divisor);
    }

    private MeasuredValue scaled(double result, double factor) {
        double[] scaled = new double[derivatives.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = factor * derivatives[i];
        }
        return new MeasuredValue(readings, result, numbers, scaled);
    }

    /** The chain rule for a function of two numbers, ∂f/∂x = (∂f/∂a)(∂a/∂x) + (∂f/∂b)(∂b/∂x). */
    private MeasuredValue combined(double result, double byThis, MeasuredValue other, double byOther) {
        int[] union = new int[numbers.length + other.numbers.length];
        double[] sums = new double[union.length];
        int size = 0;
        int i = 0;
        int j = 0;
        while (i < numbers.length || j < other.numbers.length) {
            boolean own = j == other.numbers.length || (i < numbers.length && numbers[i] <= other.numbers[j]);
            boolean others = i == numbers.length || (j < other.numbers.length && other.numbers[j] <= numbers[i]);
            union[size] = own ? numbers[i] : other.numbers[j];
            sums[size] = (own ? byThis * derivatives[i] : 0) + (others ? byOther * other.derivatives[j] : 0);
            size++;
            i += own ? 1 : 0;
            j += others ? 1 : 0;
        }
        int[] shared = size == numbers.length
                ? numbers
                : size == other.numbers.length ? other.numbers : Arrays.copyOf(union, size);
        return new MeasuredValue(readings, result, shared, size == sums.length ? sums : Arrays.copyOf(sums, size));
    }

    @Override
    public String toString() {
        return value + " (u " + standardUncertainty() + ")";
    }
}
