package workuptally.model;

import java.util.OptionalDouble;

/**
 * A figure of a sentence as data: the value as computed, its unit, and how a reader sees it rounded. It becomes text where the reader is
 * known, with the decimal mark of the reader.
 *
 * @param value value in the unit
 * @param expandedUncertainty U in the same unit; empty where none is told
 * @param unit unit as it is written behind the number, {@code g}, {@code %}; empty for none
 * @param rounding how it is rounded
 * @param places decimals or significant digits, as the rounding counts them; 0 where it has its own
 */
public record Figure(double value, OptionalDouble expandedUncertainty, String unit, Rounding rounding, int places) {
    /** Ways to round a figure. */
    public enum Rounding {
        /** So many decimals. */
        DECIMALS,
        /** So many decimals, of a mass or volume whose unit stands behind another figure; two digits where these would hardly tell it. */
        AMOUNT,
        /** So many decimals, with a sign before a positive number as well. */
        SIGNED,
        /** So many significant digits, never a power of ten. */
        DIGITS,
        /** An upper bound, rounded up to the digits that all bounds have. */
        BOUND,
        /** At most so many significant digits, without zeros at the end. */
        BRIEF
    }

    private static final int BRIEF_DIGITS = 4;

    /** A number with so many decimals. */
    public static Figure decimals(double value, int decimals, String unit) {
        return new Figure(value, OptionalDouble.empty(), unit, Rounding.DECIMALS, decimals);
    }

    /** The lower end of a range of masses or volumes, whose unit stands behind the upper one. */
    public static Figure from(double value, int decimals) {
        return new Figure(value, OptionalDouble.empty(), "", Rounding.AMOUNT, decimals);
    }

    /** A difference with so many decimals and its sign. */
    public static Figure signed(double value, int decimals, String unit) {
        return new Figure(value, OptionalDouble.empty(), unit, Rounding.SIGNED, decimals);
    }

    /** A number with so many significant digits. */
    public static Figure digits(double value, int digits, String unit) {
        return new Figure(value, OptionalDouble.empty(), unit, Rounding.DIGITS, digits);
    }

    /** A value with its expanded uncertainty, both with so many decimals. */
    public static Figure pair(double value, double expandedUncertainty, int decimals, String unit) {
        return new Figure(value, OptionalDouble.of(expandedUncertainty), unit, Rounding.DECIMALS, decimals);
    }

    /** An upper bound, rounded up: alike in every sentence and table. */
    public static Figure bound(double bound, String unit) {
        return new Figure(bound, OptionalDouble.empty(), unit, Rounding.BOUND, 0);
    }

    /** A number with up to four digits and no zeros at its end. */
    public static Figure brief(double value, String unit) {
        return new Figure(value, OptionalDouble.empty(), unit, Rounding.BRIEF, BRIEF_DIGITS);
    }

    /** Equal in every part; see the contributor guide on records as keys. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Figure figure
                && Double.compare(value, figure.value) == 0
                && expandedUncertainty.equals(figure.expandedUncertainty)
                && unit.equals(figure.unit)
                && rounding == figure.rounding
                && places == figure.places;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(value) + unit.hashCode();
    }
}
