package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of the kilo laboratory; expected texts worked out by hand. */
class LargeFiguresTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "14477 mL in a funnel of 20000 mL|14.5 L in a funnel of 20.0 L",
                "9999 mL|9999 mL",
                "10000 mL|10.0 L",
                "1.448e+04 mL of 'juice'|14.5 L of 'juice'",
                "2.50e+03 g product|2500 g product",
                "45321.4 g in, 12.3 g gap|45.32 kg in, 12.3 g gap",
                "123456 g|123.5 kg",
                "read 12345 g/mol|read 12345 g/mol",
                "container W-10000 g|container W-10000 g"
            })
    void tenLitresAndTenKilogramsAreToldInLitresAndKilograms(String sentence, String told) {
        assertEquals(told, LargeFigures.in(sentence));
    }
}
