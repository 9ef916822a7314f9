package workuptally.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/**
 * The readings that the results of one run depend on.
 *
 * <p>Every entered number is registered once and used everywhere, so that results which share it stay correlated. Not safe for use by
 * several threads at once.
 */
public final class Readings {
    /** The numbers of the first readings, each in an array, which all runs share. */
    private static final int[][] FIRST = new int[64][];

    static {
        Arrays.setAll(FIRST, number -> new int[] {number});
    }

    private final List<Reading> entered = new ArrayList<>();

    /**
     * Enters a reading.
     *
     * @param name what was read
     * @param unit unit of value and uncertainty
     * @param value the number
     * @param standardUncertainty standard uncertainty, 0 or more
     * @param where place in the book, in words
     * @return the value, with derivative 1 by itself
     * @throws IllegalArgumentException if a number is not finite or the uncertainty is negative
     */
    public MeasuredValue enter(
            String name, String unit, double value, double standardUncertainty, Supplier<String> where) {
        return enter(name, unit, value, standardUncertainty, Double.POSITIVE_INFINITY, where);
    }

    /**
     * Enters a reading whose standard uncertainty was itself estimated from few repeats.
     *
     * @param name what was read
     * @param unit unit of value and uncertainty
     * @param value the number
     * @param standardUncertainty standard uncertainty, 0 or more
     * @param degreesOfFreedom of that uncertainty, above 0; infinity where it is taken as well known
     * @param where place in the book, in words
     * @return the value, with derivative 1 by itself
     * @throws IllegalArgumentException if a number is out of range
     */
    public MeasuredValue enter(
            String name,
            String unit,
            double value,
            double standardUncertainty,
            double degreesOfFreedom,
            Supplier<String> where) {
        // many runs have readings of the same name, such as the gross of layer A1
        Reading reading = new Reading(name.intern(), unit, value, standardUncertainty, degreesOfFreedom, where);
        if (standardUncertainty == 0) {
            return exact(value);
        }
        int number = entered.size();
        entered.add(reading);
        return MeasuredValue.entered(this, value, number < FIRST.length ? FIRST[number] : new int[] {number});
    }

    /**
     * A number without uncertainty, for example a coefficient.
     *
     * @param value the number
     * @return the value
     */
    public MeasuredValue exact(double value) {
        return MeasuredValue.exact(this, value);
    }

    Reading reading(int number) {
        return entered.get(number);
    }
}
