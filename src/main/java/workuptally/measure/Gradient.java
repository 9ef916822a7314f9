package workuptally.measure;

import java.util.Arrays;

/**
 * A number with its derivatives by the readings it depends on, for forward automatic differentiation. Holds those readings only, in two
 * short arrays, since a large book keeps some hundred thousand of these at once.
 */
final class Gradient {
    private static final int[] NO_READINGS = {};
    private static final double[] NO_DERIVATIVES = {};
    private static final double[] BY_ITSELF = {1};

    private final double value;
    /** Numbers of the readings, ascending. */
    private final int[] readings;

    private final double[] derivatives;

    private Gradient(double value, int[] readings, double[] derivatives) {
        this.value = value;
        this.readings = readings;
        this.derivatives = derivatives;
    }

    static Gradient constant(double value) {
        return new Gradient(value, NO_READINGS, NO_DERIVATIVES);
    }

    static Gradient variable(int reading, double value) {
        return new Gradient(value, new int[] {reading}, BY_ITSELF);
    }

    double value() {
        return value;
    }

    /** How many readings it depends on. */
    int size() {
        return readings.length;
    }

    /** Number of the reading at a position. */
    int reading(int position) {
        return readings[position];
    }

    /** Derivative by the reading at a position. */
    double derivative(int position) {
        return derivatives[position];
    }

    Gradient plus(Gradient other) {
        return combined(value + other.value, 1, other, 1);
    }

    Gradient minus(Gradient other) {
        return combined(value - other.value, 1, other, -1);
    }

    Gradient times(Gradient other) {
        return combined(value * other.value, other.value, other, value);
    }

    Gradient times(double factor) {
        return scaled(value * factor, factor);
    }

    Gradient over(Gradient divisor) {
        double quotient = value / divisor.value;
        double[] divided = new double[derivatives.length];
        for (int i = 0; i < divided.length; i++) {
            divided[i] = derivatives[i] / divisor.value;
        }
        return new Gradient(quotient, readings, divided).combined(quotient, 1, divisor, -quotient / divisor.value);
    }

    Gradient over(double divisor) {
        return scaled(value / divisor, 1 / divisor);
    }

    private Gradient scaled(double result, double factor) {
        double[] scaled = new double[derivatives.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = factor * derivatives[i];
        }
        return new Gradient(result, readings, scaled);
    }

    /** The chain rule for a function of two numbers, ∂f/∂x = (∂f/∂a)(∂a/∂x) + (∂f/∂b)(∂b/∂x). */
    private Gradient combined(double result, double byThis, Gradient other, double byOther) {
        int[] union = new int[readings.length + other.readings.length];
        double[] sums = new double[union.length];
        int size = 0;
        int i = 0;
        int j = 0;
        while (i < readings.length || j < other.readings.length) {
            boolean own = j == other.readings.length || (i < readings.length && readings[i] <= other.readings[j]);
            boolean others = i == readings.length || (j < other.readings.length && other.readings[j] <= readings[i]);
            union[size] = own ? readings[i] : other.readings[j];
            sums[size] = (own ? byThis * derivatives[i] : 0) + (others ? byOther * other.derivatives[j] : 0);
            size++;
            i += own ? 1 : 0;
            j += others ? 1 : 0;
        }
        return size == union.length
                ? new Gradient(result, union, sums)
                : new Gradient(result, Arrays.copyOf(union, size), Arrays.copyOf(sums, size));
    }
}
