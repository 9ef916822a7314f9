package workuptally.book.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitTest {
    /** Factors of the SI prefixes: BIPM, SI Brochure, 9th edition, table 7; 1 bar = 100 kPa: ISO 80000-4. */
    @ParameterizedTest
    @CsvSource({
        "mg, g, 0.001",
        "kg, g, 1000",
        "µg, mg, 0.001",
        "L, mL, 1000",
        "µL, mL, 0.001",
        "µmol, mmol, 0.001",
        "mol, mmol, 1000",
        "g/mL, mg/mL, 1000",
        "g/L, mg/mL, 1",
        "mmol/L, mol/L, 0.001",
        "bar, kPa, 100",
        "hPa, kPa, 0.1"
    })
    void convertsByTheDefinitionOfItsPrefix(String from, String to, BigDecimal factor) {
        BigDecimal converted = Unit.named(from)
                .orElseThrow()
                .convert(BigDecimal.ONE, Unit.named(to).orElseThrow());
        assertEquals(0, factor.compareTo(converted));
    }

    @Test
    void refusesToConvertBetweenQuantities() {
        assertThrows(IllegalArgumentException.class, () -> Unit.GRAM.convert(BigDecimal.ONE, Unit.MILLILITRE));
    }

    @Test
    void aCapitalPrefixIsNotASmallOne() {
        assertEquals(Optional.empty(), Unit.named("Mg"));
        assertEquals(Optional.of(Unit.MILLIGRAM), Unit.named("MG"));
        assertEquals(Optional.of(Unit.MOLE_PER_LITRE), Unit.named("M"));
        assertEquals(Optional.empty(), Unit.named("m"));
    }
}
