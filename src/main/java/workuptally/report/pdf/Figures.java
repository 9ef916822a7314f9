package workuptally.report.pdf;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import workuptally.measure.MeasuredValue;

/**
 * Numbers as text: fixed decimals, a true minus, the decimal mark of the report. Halves are rounded up (away from zero).
 *
 * <p>An expanded uncertainty has at most two significant digits and its value ends at the same place (JCGM 100:2008, 7.2.6).
 */
final class Figures {
    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);
    private static final String MINUS = "\u2212";
    private static final String NOT_A_NUMBER = "–";

    private final char mark;

    Figures(char mark) {
        this.mark = mark;
    }

    /** A number with that many decimals. */
    String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return NOT_A_NUMBER;
        }
        return text(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
    }

    /** A number with that many significant digits, never in powers of ten. */
    String significant(double value, int digits) {
        if (!Double.isFinite(value)) {
            return NOT_A_NUMBER;
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        if (exact.signum() == 0) {
            return "0";
        }
        BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_UP));
        int decimals = digits - (rounded.precision() - rounded.scale());
        return text(rounded.setScale(Math.max(0, decimals), RoundingMode.HALF_UP));
    }

    /** A number with the decimals it needs, at most three: 2 is 2, 1.96 is 1.96. */
    String plain(double value) {
        if (!Double.isFinite(value)) {
            return NOT_A_NUMBER;
        }
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return text(rounded.signum() == 0 ? BigDecimal.ZERO : rounded);
    }

    /** A value and its expanded uncertainty. */
    Pair pair(MeasuredValue value, double coverageFactor) {
        return pair(value.value(), value.expandedUncertainty(coverageFactor));
    }

    /** A value and its expanded uncertainty; without uncertainty four significant digits. */
    Pair pair(double value, double expandedUncertainty) {
        if (!Double.isFinite(value) || !Double.isFinite(expandedUncertainty)) {
            return new Pair(NOT_A_NUMBER, "");
        }
        BigDecimal rounded = BigDecimal.valueOf(expandedUncertainty).round(TWO_DIGITS);
        if (rounded.signum() == 0) {
            return new Pair(significant(value, 4), "");
        }
        int scale = 2 - (rounded.precision() - rounded.scale());
        return new Pair(
                text(BigDecimal.valueOf(value).setScale(scale, RoundingMode.HALF_UP)),
                text(rounded.setScale(scale, RoundingMode.HALF_UP)));
    }

    private String text(BigDecimal number) {
        String digits = number.abs().toPlainString().replace('.', mark);
        boolean negative = number.signum() < 0;
        return negative ? MINUS + digits : digits;
    }

    char mark() {
        return mark;
    }

    /**
     * A value and its expanded uncertainty as text.
     *
     * @param value the value
     * @param uncertainty U; empty where there is none
     */
    record Pair(String value, String uncertainty) {
        /** {@code 84.5 ± 1.9}. */
        String together() {
            return uncertainty.isEmpty() ? value : value + "\u00A0±\u00A0" + uncertainty;
        }
    }
}
