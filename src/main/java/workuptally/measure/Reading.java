package workuptally.measure;

import java.util.Objects;

/**
 * One entered number on which results depend.
 *
 * @param name what was read, for example {@code gross of lot F-05}
 * @param unit unit of {@code value}, for example {@code g}
 * @param value the number as used
 * @param standardUncertainty standard uncertainty u in the same unit; 0 or more
 * @param where place in the book in words, for example {@code Layers!G7}
 */
public record Reading(String name, String unit, double value, double standardUncertainty, String where) {
    /** Checks the numbers. */
    public Reading {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(where, "where");
        if (!(standardUncertainty >= 0) || !Double.isFinite(standardUncertainty) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(name + ": " + value + " u " + standardUncertainty);
        }
    }
}
