package workuptally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Masses and volumes of every scale in sentences that have a fixed number of decimals; expected values by hand. */
class AmountsThatShowTest {
    @ParameterizedTest
    @CsvSource({
        "0.0022, 2, 0.0022",
        "0.00149, 2, 0.0015",
        "0.04, 2, 0.04",
        "0.0442, 2, 0.044",
        "12.34, 1, 12.3",
        "0.6, 0, 0.60",
        "-0.0034, 2, -0.0034",
        "0, 2, 0.00",
        "1e-12, 2, 0.00",
        "99.96, 1, 100.0"
    })
    void keepsTwoDigitsWhereThePlacesWouldChangeIt(double value, int decimals, String expected) {
        assertEquals(expected, Rounding.in(Locale.ROOT).toDecimalsThatShow(value, decimals));
    }
}
