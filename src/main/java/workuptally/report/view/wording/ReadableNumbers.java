package workuptally.report.view.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Rounding;

/** Numbers as text by {@link Rounding}, with a true minus, the decimal mark of the report, and a dash where there is no number. */
public final class ReadableNumbers {
    private static final char MINUS = '\u2212';
    /** The unit of what counts. */
    private static final String ONE = "1";

    private static final double LEAST_IN_KILOGRAMS = 100;
    private static final String NOT_A_NUMBER = "–";

    private final char mark;
    private final Rounding rounding;

    /**
     * Numbers for one reader.
     *
     * @param mark decimal mark, a point or a comma
     */
    public ReadableNumbers(char mark) {
        this.mark = mark;
        this.rounding = Rounding.in(mark == ',' ? Locale.GERMANY : Locale.ROOT);
    }

    /**
     * Our own words, or a figure as typed, with the reader's decimal mark. A version such as 1.2.3 stays.
     *
     * @param text text with decimal points, or with none
     */
    public String inWords(String text) {
        return FiguresInText.with(mark, text);
    }

    /** The decimal mark. */
    public char mark() {
        return mark;
    }

    /** A number with that many decimals. */
    public String fixed(double value, int decimals) {
        return Double.isFinite(value) ? signed(rounding.toDecimals(value, decimals)) : NOT_A_NUMBER;
    }

    /** A mass or volume with that many decimals, or with two digits where these would hardly tell it. */
    public String amount(double value, int decimals) {
        return Double.isFinite(value) ? signed(rounding.toDecimalsThatShow(value, decimals)) : NOT_A_NUMBER;
    }

    /** A mass with three digits and its unit, not to be broken: in g, from 100 g in kg. */
    public String mass(double grams) {
        return grams < LEAST_IN_KILOGRAMS
                ? withUnit(significant(grams, 3), "g")
                : withUnit(significant(grams / 1000, 3), "kg");
    }

    /** A number with that many significant digits, never in powers of ten. */
    public String significant(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        return Double.isFinite(value) ? signed(rounding.toSignificant(value, digits)) : NOT_A_NUMBER;
    }

    /** A number that is at most this much, rounded up to two significant digits: {@code ≤ 0.031}. */
    public String bound(double value) {
        if (!Double.isFinite(value)) {
            return NOT_A_NUMBER;
        }
        return "≤\u00A0" + most(value);
    }

    /** An upper bound, rounded up to two significant digits. */
    public String most(double value) {
        if (!Double.isFinite(value)) {
            return NOT_A_NUMBER;
        }
        return value > 0 ? rounding.upperBound(value, Rounding.BOUND_DIGITS) : "0";
    }

    /** A number with the decimals it needs, at most three: 2 is 2, 1.96 is 1.96. */
    public String plain(double value) {
        if (!Double.isFinite(value)) {
            return NOT_A_NUMBER;
        }
        int needed = BigDecimal.valueOf(value)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .scale();
        return fixed(value, Math.max(0, needed));
    }

    /** A number with at most four significant digits and no zeros at its end: 0.0005 is 0.0005, 66.6667 is 66.67. */
    public String compact(double value) {
        String text = significant(value, 4);
        return text.indexOf(mark) < 0 ? text : text.replaceFirst("0+$", "").replaceFirst("\\D$", "");
    }

    /** A value and its expanded uncertainty. */
    public Pair pair(MeasuredValue value, double coverageFactor) {
        return pair(value.value(), value.expandedUncertainty(coverageFactor));
    }

    /** A value and its expanded uncertainty; without uncertainty four significant digits. */
    public Pair pair(double value, double expandedUncertainty) {
        if (!Double.isFinite(value) || !Double.isFinite(expandedUncertainty)) {
            return new Pair(NOT_A_NUMBER, "");
        }
        if (expandedUncertainty <= 0) {
            return new Pair(significant(value, 4), "");
        }
        return new Pair(
                signed(rounding.value(value, expandedUncertainty)), signed(rounding.uncertainty(expandedUncertainty)));
    }

    /** A number and its unit, not to be broken; the number alone where it has none or counts. */
    public static String withUnit(String number, String unit) {
        return unit.isBlank() || unit.equals(ONE) ? number : number + "\u00A0" + unit;
    }

    private static String signed(String number) {
        return number.replace('-', MINUS);
    }

    /**
     * A value and its expanded uncertainty as text.
     *
     * @param value the value
     * @param uncertainty U; empty where there is none
     */
    public record Pair(String value, String uncertainty) {
        /** {@code 84.5 ± 1.9}, not to be broken. */
        public String together() {
            return uncertainty.isEmpty() ? value : value + "\u00A0±\u00A0" + uncertainty;
        }
    }
}
