package workuptally.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * Numbers as reports print them: the expanded uncertainty with two significant digits, the value to the same decimal place.
 *
 * <p>Rounding is {@link RoundingMode#HALF_UP} for values and uncertainties, {@link RoundingMode#CEILING} for upper bounds, which are never
 * understated. No grouping of thousands. Source of the two digits: JCGM 100:2008, 7.2.6.
 */
public final class Rounding {
    /** Significant digits of an uncertainty. */
    public static final int UNCERTAINTY_DIGITS = 2;

    /** Significant digits of an upper bound. */
    public static final int BOUND_DIGITS = 2;

    private static final double LEAST_AMOUNT = 1e-7;
    private static final double MOST_CHANGE = 0.05;

    /** So many digits more tell a bound from the same bound as computed in binary. */
    private static final int GUARD_DIGITS = 9;

    private static final RoundingMode VALUES = RoundingMode.HALF_UP;
    private static final RoundingMode UPPER_BOUNDS = RoundingMode.CEILING;

    private final char decimalSign;

    private Rounding(char decimalSign) {
        this.decimalSign = decimalSign;
    }

    /** Rounding that writes the decimal sign of a locale; {@link Locale#ROOT} for anything a machine reads. */
    public static Rounding in(Locale locale) {
        return new Rounding(DecimalFormatSymbols.getInstance(locale).getDecimalSeparator());
    }

    /**
     * Decimal place to which a value with this uncertainty is given.
     *
     * @param expandedUncertainty U, above 0
     * @return digits after the decimal sign; negative for tens (-1), hundreds (-2) and so on
     * @throws IllegalArgumentException if U is not above 0 and finite
     */
    public static int decimals(double expandedUncertainty) {
        if (!(expandedUncertainty > 0) || !Double.isFinite(expandedUncertainty)) {
            throw new IllegalArgumentException("expanded uncertainty " + expandedUncertainty);
        }
        return significant(expandedUncertainty, UNCERTAINTY_DIGITS, VALUES).scale();
    }

    /**
     * Value and expanded uncertainty, for example {@code 66.9 ± 1.4}.
     *
     * @param value finite
     * @param expandedUncertainty U, 0 or more; with 0 the value stands alone, as the shortest decimal
     * @throws IllegalArgumentException if a number is not finite or U is negative
     */
    public String withUncertainty(double value, double expandedUncertainty) {
        if (expandedUncertainty == 0) {
            return plain(exact(value));
        }
        return value(value, expandedUncertainty) + " ± " + uncertainty(expandedUncertainty);
    }

    /**
     * The uncertainty alone, with two significant digits.
     *
     * @param expandedUncertainty U, above 0
     * @throws IllegalArgumentException if it is not finite or out of range
     */
    public String uncertainty(double expandedUncertainty) {
        return plain(exact(expandedUncertainty).setScale(decimals(expandedUncertainty), VALUES));
    }

    /**
     * The value alone, to the decimal place its uncertainty allows.
     *
     * @param value finite
     * @param expandedUncertainty U, above 0
     * @throws IllegalArgumentException if a number is out of range
     */
    public String value(double value, double expandedUncertainty) {
        return toDecimals(value, decimals(expandedUncertainty));
    }

    /**
     * A value to a decimal place.
     *
     * @param value finite
     * @param decimals digits after the decimal sign; negative for tens, hundreds and so on
     * @throws IllegalArgumentException if the value is not finite
     */
    public String toDecimals(double value, int decimals) {
        BigDecimal rounded = exact(value).setScale(decimals, VALUES);
        return plain(rounded.signum() == 0 ? rounded.abs() : rounded);
    }

    /**
     * A mass or volume to a decimal place, but with two significant digits where the place would change it by more than a twentieth: 12.3 g
     * and 0.0022 g both stand in a sentence that has grams with one decimal.
     *
     * @param value finite; less than a ten-millionth counts as nothing, since sums in binary leave as much
     * @param decimals digits after the decimal sign, 0 or more
     * @throws IllegalArgumentException if the value is not finite
     */
    public String toDecimalsThatShow(double value, int decimals) {
        double rounded = exact(value).setScale(decimals, VALUES).doubleValue();
        return Math.abs(value) < LEAST_AMOUNT || Math.abs(rounded - value) <= MOST_CHANGE * Math.abs(value)
                ? toDecimals(value, decimals)
                : toSignificant(value, UNCERTAINTY_DIGITS);
    }

    /**
     * A value to a number of significant digits.
     *
     * @param value finite
     * @param digits 1 or more
     * @throws IllegalArgumentException if out of range
     */
    public String toSignificant(double value, int digits) {
        return plain(significant(value, digits, VALUES));
    }

    /**
     * An upper bound, rounded up, for example {@code 0.03}; a bound that computing in binary made a hair larger is not.
     *
     * @param bound above 0
     * @param digits significant digits, 1 or more
     * @throws IllegalArgumentException if out of range
     */
    public String upperBound(double bound, int digits) {
        if (!(bound > 0)) {
            throw new IllegalArgumentException("bound " + bound);
        }
        double meant = exact(bound)
                .round(new MathContext(digits + GUARD_DIGITS, VALUES))
                .doubleValue();
        return plain(significant(meant, digits, UPPER_BOUNDS));
    }

    private static BigDecimal significant(double value, int digits, RoundingMode mode) {
        if (digits < 1) {
            throw new IllegalArgumentException("significant digits " + digits);
        }
        BigDecimal rounded = exact(value).round(new MathContext(digits, mode));
        int missing = digits - rounded.precision();
        return rounded.signum() == 0 || missing <= 0 ? rounded : rounded.setScale(rounded.scale() + missing);
    }

    /** The shortest decimal that reads back as the number: 1.005 stays 1.005, although its binary form is a little less. */
    private static BigDecimal exact(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("number " + value);
        }
        return BigDecimal.valueOf(value);
    }

    private String plain(BigDecimal number) {
        return number.toPlainString().replace('.', decimalSign);
    }
}
