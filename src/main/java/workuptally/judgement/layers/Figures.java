package workuptally.judgement.layers;

import java.math.BigDecimal;
import java.util.Locale;

/** Figures in the reasons of a decision. */
final class Figures {
    private Figures() {}

    /** A number with so many significant digits and never a power of ten: {@code 130}, {@code 2.0}, {@code 0.030}. */
    static String of(double number, int digits) {
        return new BigDecimal(String.format(Locale.ROOT, "%." + digits + "g", number)).toPlainString();
    }
}
