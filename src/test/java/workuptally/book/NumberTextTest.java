package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextTest {
    private final Locale before = Locale.getDefault();

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3.20|3.20|2|EXACT|",
                "3,20|3.20|2|EXACT|",
                "−2.5|-2.5|1|EXACT|",
                "–2,5|-2.5|1|EXACT|",
                "+4|4|0|EXACT|",
                ".5|0.5|1|EXACT|",
                "12.|12|0|EXACT|",
                "0,123|0.123|3|EXACT|",
                "1.234|1.234|3|EXACT|",
                "5e-3|0.005|3|EXACT|",
                "1,2E+2|120|0|EXACT|",
                "1.234,5|1234.5|1|EXACT|",
                "1,234.5|1234.5|1|EXACT|",
                "1.234.567|1234567|0|EXACT|",
                "12 500|12500|0|EXACT|",
                "12 500,5 g|12500.5|1|EXACT|GRAM",
                "1'250.25|1250.25|2|EXACT|",
                "12,5 mL|12.5|1|EXACT|MILLILITRE",
                "12.5ml|12.5|1|EXACT|MILLILITRE",
                "3 µL|3|0|EXACT|MICROLITRE",
                "3 μL|3|0|EXACT|MICROLITRE",
                "0.5 M|0.5|1|EXACT|MOLE_PER_LITRE",
                "20 mM|20|0|EXACT|MILLIMOLE_PER_LITRE",
                "98 % w/w|98|0|EXACT|MASS_PERCENT",
                "98wt%|98|0|EXACT|MASS_PERCENT",
                "-5 °C|-5|0|EXACT|CELSIUS",
                "<0.10|0.10|2|BELOW|",
                "< 0,1 mg/mL|0.1|1|BELOW|MILLIGRAM_PER_MILLILITRE",
                "≤1|1|0|BELOW|",
                ">12|12|0|ABOVE|",
                "ca. 40|40|0|ABOUT|",
                "ca 40 mL|40|0|ABOUT|MILLILITRE",
                "about 40|40|0|ABOUT|",
                "~5|5|0|ABOUT|",
                "3 drops|0.15|2|DROPS|MILLILITRE",
                "1 drop|0.05|2|DROPS|MILLILITRE",
                "ca. 5 gtt|0.25|2|DROPS|MILLILITRE",
                "2 Tropfen|0.1|2|DROPS|MILLILITRE"
            })
    void readsNumbersAsPeopleWriteThem(String typed, String value, int decimals, String qualifier, String unit) {
        NumberText.Number number = assertInstanceOf(NumberText.Number.class, NumberText.parse(typed));
        assertEquals(Double.parseDouble(value), number.value().doubleValue(), 0);
        assertEquals(decimals, number.decimals());
        assertEquals(qualifier, number.qualifier().name());
        assertEquals(unit == null ? "" : unit, number.unit().map(Enum::name).orElse(""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12,5o",
                "3.2*",
                "1.2.3",
                "1,23,4",
                "12,",
                "abc",
                "2.62 ± 0.04",
                "1e999",
                "--2",
                "3/4",
                "1,2.3,4",
                "1.5.2026",
                "12:30",
                "<",
                "ca.",
                "NaN",
                "Infinity",
                "1234567890123456789012345678901234567890123456789012345678901"
            })
    void refusesWhatIsNoNumber(String typed) {
        assertEquals("number-unreadable", fault(typed).code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,234", "12,345", "999,000 g"})
    void asksWhereACommaCanBeReadInTwoWays(String typed) {
        assertEquals("number-ambiguous", fault(typed).code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.5 lb", "3 pipettes", "2 Mg"})
    void namesAUnitItDoesNotKnow(String typed) {
        assertEquals("unit-unknown", fault(typed).code());
    }

    @ParameterizedTest
    @CsvSource({
        "3-4, ca.",
        "0.5 – 1 mL, ca.",
        "180 +/- 2, ca.",
        "3 mL (cloudy), Notes",
        "3 mL?, Notes",
        "250mg (wet), Notes",
        "spatula tip, Notes"
    })
    void tellsHowToWriteWhatIsNotOneNumber(String typed, String named) {
        NumberText.Fault fault = fault(typed);
        assertEquals("number-unreadable", fault.code());
        assertTrue(fault.action().contains(named), fault.action());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2 x 30 mL", "2x30", "3 × 25 mL", "2*30"})
    void tellsPortionsFromANumber(String typed) {
        assertEquals("portions-in-number", fault(typed).code());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "\u00A0",
                "\u200B\uFEFF",
                "-",
                "–",
                "--",
                "n/a",
                "?",
                "not measured",
                "n.b.",
                "nicht bestimmt",
                "tbc"
            })
    void takesDashesAndInvisibleCharactersForNothing(String typed) {
        assertInstanceOf(NumberText.Nothing.class, NumberText.parse(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"n.d.", "nd", "N.D.", "n. d.", "not detected", "n. n.", "nicht nachweisbar"})
    void knowsNotDetected(String typed) {
        assertInstanceOf(NumberText.NotDetected.class, NumberText.parse(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u00A03.2\u00A0", "3.2\u200B", "\uFEFF3.2", "\u202F3.2 "})
    void trimsSpacesThatCannotBeSeen(String typed) {
        NumberText.Number number = assertInstanceOf(NumberText.Number.class, NumberText.parse(typed));
        assertEquals(3.2, number.value().doubleValue(), 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "hi-IN"})
    void doesNotDependOnTheLocale(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        NumberText.Number number = assertInstanceOf(NumberText.Number.class, NumberText.parse("1,5 ML"));
        assertEquals(1.5, number.value().doubleValue(), 0);
        assertEquals(Unit.MILLILITRE, number.unit().orElseThrow());
    }

    @Test
    void keepsTheDigitsOfAGroupedNumberApartFromItsUnit() {
        NumberText.Number number = assertInstanceOf(NumberText.Number.class, NumberText.parse("2 kg"));
        assertEquals(Unit.KILOGRAM, number.unit().orElseThrow());
    }

    private static NumberText.Fault fault(String typed) {
        return assertInstanceOf(NumberText.Fault.class, NumberText.parse(typed));
    }
}
