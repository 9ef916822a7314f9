package workuptally.report.view.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected texts by hand from the rule: at most two digits of U, the value to the same place (JCGM 100:2008, 7.2.6). */
class ReadableNumbersTest {
    private final ReadableNumbers figures = new ReadableNumbers('.');

    @ParameterizedTest
    @CsvSource({
        "64.234, 1.4162, 64.2 ± 1.4",
        "8.0021, 0.0014, 8.0021 ± 0.0014",
        "99.54, 0.0996, 99.54 ± 0.10",
        "1234.5, 123, 1230 ± 120",
        "98.96, 9.96, 99 ± 10",
        "0.0312, 0.25, 0.03 ± 0.25",
        "12.5, 0, 12.50",
        "-4.64, 3.04, −4.6 ± 3.0",
        "-0.004, 1.2, 0.0 ± 1.2"
    })
    void valueEndsWhereItsUncertaintyEnds(double value, double expandedUncertainty, String text) {
        assertEquals(text, figures.pair(value, expandedUncertainty).together().replace('\u00A0', ' '));
    }

    @ParameterizedTest
    @CsvSource({
        "0.03125, 2, 0.031",
        "3.63, 2, 3.6",
        "99.96, 3, 100",
        "1234.5, 2, 1200",
        "0, 2, 0",
        "-0.66, 2, −0.66",
        "9.96, 2, 10"
    })
    void significantDigitsNeverNeedPowersOfTen(double value, int digits, String text) {
        assertEquals(text, figures.significant(value, digits));
    }

    @ParameterizedTest
    @CsvSource({"2, 2", "1.96, 1.96", "2.5, 2.5", "90, 90", "0, 0"})
    void plainNumbersShowNoEmptyDecimals(double value, String text) {
        assertEquals(text, figures.plain(value));
    }

    @Test
    void boundsAreNeverUnderstated() {
        assertEquals("≤\u00A00.032", figures.bound(0.0311));
        assertEquals("≤\u00A00", figures.bound(0));
    }

    @Test
    void commaIsUsedWhereAskedFor() {
        assertEquals("−0,50", new ReadableNumbers(',').fixed(-0.5, 2));
    }

    @Test
    void numberThatIsNoneIsADash() {
        assertEquals("–", figures.fixed(Double.NaN, 2));
    }
}
