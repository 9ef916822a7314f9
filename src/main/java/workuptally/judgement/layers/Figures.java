package workuptally.judgement.layers;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Figures in the reasons of a decision. */
final class Figures {
    /** So many digits more tell a bound from the same bound as computed in binary. */
    private static final int GUARD_DIGITS = 6;

    private Figures() {}

    /** An upper bound, rounded up to so many significant digits. */
    static String atMost(double bound, int digits) {
        BigDecimal rounded = new BigDecimal(bound)
                .round(new MathContext(digits + GUARD_DIGITS, RoundingMode.HALF_UP))
                .round(new MathContext(digits, RoundingMode.UP));
        return rounded.signum() == 0
                ? "0"
                : rounded.setScale(rounded.scale() + digits - rounded.precision())
                        .toPlainString();
    }

    /** A number with so many significant digits and never a power of ten: {@code 130}, {@code 2.0}, {@code 0.030}. */
    static String of(double number, int digits) {
        return new BigDecimal(String.format(Locale.ROOT, "%." + digits + "g", number)).toPlainString();
    }
}
