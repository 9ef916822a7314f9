package workuptally.measure;

import java.util.Objects;
import java.util.function.Supplier;

/**
 * One entered number on which results depend.
 *
 * @param name what was read, for example {@code gross of lot F-05}
 * @param unit unit of {@code value}, for example {@code g}
 * @param value the number as used
 * @param standardUncertainty standard uncertainty u in the same unit; 0 or more
 * @param degreesOfFreedom how well u is known, above 0: n − 1 where it was estimated from n repeats, less for a part of such an
 *     estimate; infinity where it is taken as well known
 * @param source place in the book in words; made when it is asked for, since a large book has hundred thousands of readings and few are
 *     ever spoken of
 */
public record Reading(
        String name,
        String unit,
        double value,
        double standardUncertainty,
        double degreesOfFreedom,
        Supplier<String> source) {
    /** Checks the numbers. */
    public Reading {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
        if (!(standardUncertainty >= 0) || !Double.isFinite(standardUncertainty) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(name + ": " + value + " u " + standardUncertainty);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(name + ": degrees of freedom " + degreesOfFreedom);
        }
    }

    /** Place in the book in words, for example {@code Layers!G7}. */
    public String where() {
        return source.get();
    }
}
