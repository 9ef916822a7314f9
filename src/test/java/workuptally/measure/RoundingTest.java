package workuptally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected texts follow JCGM 100:2008, 7.2.6: at most two digits of U, the value to match. */
class RoundingTest {
    private final Rounding rounding = Rounding.in(Locale.ROOT);

    @ParameterizedTest
    @CsvSource({
        "66.87, 1.43, 66.9 ± 1.4",
        "66.87, 14.3, 67 ± 14",
        "668.7, 143, 670 ± 140",
        "66.87, 0.0996, 66.87 ± 0.10",
        "66.8749, 0.00143, 66.8749 ± 0.0014",
        "0.1234, 0.02, 0.123 ± 0.020",
        "-0.04, 1.4, 0.0 ± 1.4",
        "-1.26, 0.15, -1.26 ± 0.15",
        "1.005, 0.015, 1.005 ± 0.015",
        "2.5, 0, 2.5"
    })
    void uncertaintyHasTwoDigitsAndTheValueMatches(double value, double uncertainty, String text) {
        assertEquals(text, rounding.withUncertainty(value, uncertainty));
    }

    @Test
    void halvesRoundUp() {
        assertEquals("1.01", rounding.toDecimals(1.005, 2));
        assertEquals("0.13", rounding.toDecimals(0.125, 2));
        assertEquals("120", rounding.toDecimals(115, -1));
    }

    @Test
    void roundedZeroHasNoSign() {
        assertEquals("0.00", rounding.toDecimals(-0.001, 2));
    }

    @ParameterizedTest
    @CsvSource({"0.0275, 1, 0.03", "0.0275, 2, 0.028", "0.03, 1, 0.03", "0.0301, 1, 0.04", "1.2, 2, 1.2", "96, 1, 100"})
    void upperBoundsAreNeverUnderstated(double bound, int digits, String text) {
        assertEquals(text, rounding.upperBound(bound, digits));
    }

    @Test
    void significantDigitsKeepTrailingZeros() {
        assertEquals("1.20", rounding.toSignificant(1.2, 3));
        assertEquals("1200", rounding.toSignificant(1234, 2));
        assertEquals("0.0", rounding.toSignificant(0, 2));
    }

    @Test
    void decimalSignFollowsTheLocale() {
        assertEquals("66,9 ± 1,4", Rounding.in(Locale.GERMANY).withUncertainty(66.87, 1.43));
        assertEquals("0,03", Rounding.in(Locale.GERMANY).upperBound(0.0275, 1));
    }

    @Test
    void decimalsTellThePlace() {
        assertEquals(1, Rounding.decimals(1.43));
        assertEquals(0, Rounding.decimals(14.3));
        assertEquals(-1, Rounding.decimals(143));
        assertEquals(2, Rounding.decimals(0.0996));
        assertEquals(2, Rounding.decimals(0.5));
    }

    @Test
    void numbersOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Rounding.decimals(0));
        assertThrows(IllegalArgumentException.class, () -> Rounding.decimals(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> rounding.withUncertainty(1, -1));
        assertThrows(IllegalArgumentException.class, () -> rounding.withUncertainty(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> rounding.upperBound(0, 1));
        assertThrows(IllegalArgumentException.class, () -> rounding.toSignificant(1, 0));
    }
}
