package workuptally.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A value with its standard uncertainty and the readings it depends on.
 *
 * <p>First-order propagation u(y)² = Σ (∂y/∂xᵢ)² u(xᵢ)² over the entered readings xᵢ, which are independent of each other; the
 * derivatives come from automatic differentiation, so a reading used twice is counted with its joint effect. Source: JCGM 100:2008,
 * 5.1.2. Valid while u is small against the curvature of the equation; bounds, not intervals, are used near zero.
 */
public final class MeasuredValue {
    private final Readings readings;
    private final Gradient gradient;

    MeasuredValue(Readings readings, Gradient gradient) {
        this.readings = readings;
        this.gradient = gradient;
    }

    /** The value, in the unit its holder names. */
    public double value() {
        return gradient.value();
    }

    /** The standard uncertainty (k = 1), in the unit of the value; 0 or more. */
    public double standardUncertainty() {
        double variance = 0;
        for (int i = 0; i < gradient.size(); i++) {
            double part = gradient.derivative(i)
                    * readings.reading(gradient.reading(i)).standardUncertainty();
            variance += part * part;
        }
        return Math.sqrt(variance);
    }

    /**
     * The expanded uncertainty U = k·u.
     *
     * @param coverageFactor k, above 0
     */
    public double expandedUncertainty(double coverageFactor) {
        return coverageFactor * standardUncertainty();
    }

    /** Relative standard uncertainty u/|y|; 0 when the value is 0. */
    public double relativeStandardUncertainty() {
        return value() == 0 ? 0 : standardUncertainty() / Math.abs(value());
    }

    /** The readings this value depends on, the largest share of variance first; ties in order of entry. */
    public List<Contribution> budget() {
        double u = standardUncertainty();
        List<Contribution> parts = new ArrayList<>();
        for (int i = 0; i < gradient.size(); i++) {
            double sensitivity = gradient.derivative(i);
            if (sensitivity != 0) {
                Reading reading = readings.reading(gradient.reading(i));
                double part = sensitivity * reading.standardUncertainty();
                parts.add(new Contribution(reading, sensitivity, u == 0 ? 0 : 100 * part * part / (u * u)));
            }
        }
        parts.sort(Comparator.comparingDouble(Contribution::variancePercent).reversed());
        return List.copyOf(parts);
    }

    /** Sum; both values belong to the same {@link Readings}. */
    public MeasuredValue plus(MeasuredValue other) {
        return with(gradient.plus(other.gradient));
    }

    /** Difference; both values belong to the same {@link Readings}. */
    public MeasuredValue minus(MeasuredValue other) {
        return with(gradient.minus(other.gradient));
    }

    /** Product; both values belong to the same {@link Readings}. */
    public MeasuredValue times(MeasuredValue other) {
        return with(gradient.times(other.gradient));
    }

    /** Product with an exact number. */
    public MeasuredValue times(double factor) {
        return with(gradient.times(factor));
    }

    /**
     * Quotient; both values belong to the same {@link Readings}.
     *
     * @throws ArithmeticException if the divisor is 0
     */
    public MeasuredValue over(MeasuredValue divisor) {
        if (divisor.value() == 0) {
            throw new ArithmeticException("division by a value of 0");
        }
        return with(gradient.over(divisor.gradient));
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
        return with(gradient.over(divisor));
    }

    private MeasuredValue with(Gradient result) {
        return new MeasuredValue(readings, result);
    }

    @Override
    public String toString() {
        return value() + " (u " + standardUncertainty() + ")";
    }
}
