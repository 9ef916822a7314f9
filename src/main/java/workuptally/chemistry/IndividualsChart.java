package workuptally.chemistry;

import java.util.ArrayList;
import java.util.List;

/**
 * Individuals and moving-range chart of a repeated preparation.
 *
 * <p>Limits x̄ ± 3·MR̄/d₂ and, for the moving range, D₄·MR̄, with d₂ = 1.128 and D₄ = 3.267 for ranges of two. Source: NIST/SEMATECH
 * e-Handbook of Statistical Methods, 6.3.2.2. Limits come from a baseline; later points are judged against them, not added. Eight points are
 * the least to draw limits, twenty to trust them (common practice).
 *
 * @param centre x̄ of the baseline
 * @param meanMovingRange MR̄ of the baseline
 */
public record IndividualsChart(double centre, double meanMovingRange) {
    /** Mean range of two normal values in standard deviations. Source: control chart tables, 1.128. */
    public static final double D2 = 1.128;

    /** Upper limit of the range of two in mean ranges. Source: control chart tables, 3.267. */
    public static final double D4 = 3.267;

    /** Points in a row on one side that make a signal. Source: Nelson 1984, from memory. */
    public static final int RUN_LENGTH = 9;

    /** Points in a row rising or falling that make a signal. Source: Nelson 1984, from memory. */
    public static final int TREND_LENGTH = 6;

    /** Least number of points to draw limits; common practice. */
    public static final int LEAST_POINTS = 8;

    /** What a point signals. */
    public enum Rule {
        /** The point lies outside the limits. */
        OUTSIDE_LIMITS,
        /** The moving range to the point before lies above its limit. */
        MOVING_RANGE,
        /** Nine in a row on one side of the centre end here or go on. */
        NINE_ON_ONE_SIDE,
        /** Six in a row rising or falling end here or go on. */
        SIX_RISING_OR_FALLING
    }

    /**
     * A signal of the chart.
     *
     * @param index place of the point, from 0
     * @param rule what it signals
     */
    public record Signal(int index, Rule rule) {}

    /**
     * Chart of a baseline.
     *
     * @param baseline at least two results in order of time
     * @throws IllegalArgumentException if fewer or not finite
     */
    public static IndividualsChart of(List<Double> baseline) {
        Statistics.sized(baseline, 2);
        double ranges = 0;
        for (int i = 1; i < baseline.size(); i++) {
            ranges += Math.abs(baseline.get(i) - baseline.get(i - 1));
        }
        return new IndividualsChart(Statistics.mean(baseline), ranges / (baseline.size() - 1));
    }

    /** x̄ + 3·MR̄/d₂. */
    public double upperLimit() {
        return centre + 3 * meanMovingRange / D2;
    }

    /** x̄ − 3·MR̄/d₂. */
    public double lowerLimit() {
        return centre - 3 * meanMovingRange / D2;
    }

    /** D₄·MR̄. */
    public double movingRangeLimit() {
        return D4 * meanMovingRange;
    }

    /**
     * Signals among results in order of time.
     *
     * @param values any number
     * @return by index, then in order of the rules
     */
    public List<Signal> signals(List<Double> values) {
        List<Signal> found = new ArrayList<>();
        int side = 0;
        int sameSide = 0;
        int direction = 0;
        int sameDirection = 0;
        for (int i = 0; i < values.size(); i++) {
            double value = Require.finite(values.get(i), "value");
            int nowSide = (int) Math.signum(value - centre);
            sameSide = nowSide != 0 && nowSide == side ? sameSide + 1 : Math.abs(nowSide);
            side = nowSide;
            if (value > upperLimit() || value < lowerLimit()) {
                found.add(new Signal(i, Rule.OUTSIDE_LIMITS));
            }
            if (i > 0) {
                double step = value - values.get(i - 1);
                int nowDirection = (int) Math.signum(step);
                sameDirection =
                        nowDirection != 0 && nowDirection == direction ? sameDirection + 1 : Math.abs(nowDirection);
                direction = nowDirection;
                if (Math.abs(step) > movingRangeLimit()) {
                    found.add(new Signal(i, Rule.MOVING_RANGE));
                }
            }
            if (sameSide >= RUN_LENGTH) {
                found.add(new Signal(i, Rule.NINE_ON_ONE_SIDE));
            }
            // Six points in a row make five steps.
            if (sameDirection >= TREND_LENGTH - 1) {
                found.add(new Signal(i, Rule.SIX_RISING_OR_FALLING));
            }
        }
        return List.copyOf(found);
    }
}
