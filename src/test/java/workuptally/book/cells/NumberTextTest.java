package workuptally.book.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.book.schema.WorkupTables;
import workuptally.book.words.Unit;
import workuptally.model.Field.Qualifier;

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

    /** What nobody measured is no result; how it was measured may stand beside it. */
    @ParameterizedTest
    @CsvSource({
        "0.08 (estimate), false",
        "0.08 est., false",
        "0.08 (geschätzt), false",
        "0.08 (guess), false",
        "0.08 (HPLC), true",
        "0.08 (average), true"
    })
    void estimateIsNoResult(String typed, boolean read) {
        NumberSymbols result =
                NumberSymbols.of(WorkupTables.ASSAYS.columnsByHeading().get("Result"));
        NumberText text = NumberText.parse(typed, NumberText.Marks.UNKNOWN, result);
        assertEquals(read, text instanceof NumberText.Number, typed);
    }

    /** How it was got changes nothing in a number, and asks nothing; another time, count or quantity does. */
    @ParameterizedTest
    @CsvSource({
        "2.78 (after 2 h HV), 2.78",
        "2.78 g after 30 min on the pump, 2.78",
        "'2,78 (nach 2 h Hochvakuum)', 2.78",
        "2.78 (2 crops), 2.78",
        "2.78 (two crops), 2.78",
        "2.78 const. mass, 2.78",
        "2.78 g (constant weight), 2.78",
        "0.08 mean of 3, 0.08",
        "0.08 (n=3), 0.08",
        "<0.08 (mean of 2), 0.08",
        "0.08 (after 2 h), ''",
        "2.78 (2 portions), ''",
        "2.78 (3 x), ''",
        "mean of 3, ''"
    })
    void whatSaysHowANumberWasGotIsTakenOff(String typed, String value) {
        if (value.isEmpty()) {
            assertFalse(NumberText.parse(typed) instanceof NumberText.Number, typed);
        } else {
            NumberText.Number number = assertInstanceOf(NumberText.Number.class, NumberText.parse(typed), typed);
            assertEquals(Double.parseDouble(value), number.value().doubleValue(), 0);
            assertEquals(Optional.empty(), number.remark());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12,5o",
                "1.2.3",
                "1,23,4",
                "12,",
                "abc",
                "1e999",
                "--2",
                "1,2.3,4",
                "1.5.2026",
                "<",
                "ca.",
                "NaN",
                "Infinity",
                "1234567890123456789012345678901234567890123456789012345678901"
            })
    void refusesWhatIsNoNumber(String typed) {
        assertEquals("number-unreadable", fault(typed).code().word());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,234", "12,345", "999,000 g"})
    void asksWhereACommaCanBeReadInTwoWays(String typed) {
        NumberText.Ambiguous read = assertInstanceOf(NumberText.Ambiguous.class, NumberText.parse(typed));
        assertEquals("number-ambiguous", read.fault("1,234").code().word());
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.5 lb", "3 pipettes", "2 Mg"})
    void namesAUnitItDoesNotKnow(String typed) {
        assertEquals("unit-unknown", fault(typed).code().word());
    }

    @ParameterizedTest
    @CsvSource({"3 mL?, Notes", "250mg (wet), Notes", "spatula tip, Notes"})
    void tellsHowToWriteWhatIsNotOneNumber(String typed, String named) {
        NumberText.Fault fault = fault(typed);
        assertEquals("number-unreadable", fault.code().word());
        assertTrue(fault.action().contains(named), fault.action());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2 x 30 mL", "2x30", "3 × 25 mL", "2*30"})
    void tellsPortionsFromANumber(String typed) {
        NumberText.Several read = assertInstanceOf(NumberText.Several.class, NumberText.parse(typed));
        assertEquals(NumberText.Together.PORTIONS, read.together());
    }

    @ParameterizedTest
    @CsvSource({
        "3-4, 3.5, 0.5",
        "0.5 – 1 mL, 0.75, 0.25",
        "'1,5 bis 2,5', 2, 0.5",
        "2..3, 2.5, 0.5",
        "0 to 5 °C, 2.5, 2.5"
    })
    void readsARangeByItsMiddle(String typed, double middle, double halfWidth) {
        NumberText.Number number = assertInstanceOf(NumberText.Number.class, NumberText.parse(typed));
        assertEquals(Qualifier.RANGE, number.qualifier());
        assertEquals(middle, number.value().doubleValue(), 1e-12);
        assertEquals(halfWidth, number.halfWidth().doubleValue(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({
        "180 +/- 2, NOTE",
        "2.62 ± 0.04, NOTE",
        "3.2*, CHECK",
        "12.21 g (100 mmol), NOTE",
        "394.2 (with lid), CHECK"
    })
    void namesWhatStandsBesideANumber(String typed, String severity) {
        NumberText.Number number = assertInstanceOf(NumberText.Number.class, NumberText.parse(typed));
        assertEquals(severity, number.remark().orElseThrow().severity().name());
    }

    @ParameterizedTest
    @CsvSource({"3/4, SLASH", "60:1, COLON", "80 + 40, SUM", "'50, 50', SUM", "95.012 - 94.100, DIFFERENCE"})
    void leavesSeveralNumbersToTheColumn(String typed, String together) {
        NumberText.Several read = assertInstanceOf(NumberText.Several.class, NumberText.parse(typed));
        assertEquals(together, read.together().name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.500", "12.345 g"})
    void asksWhereAPointCanBeReadInTwoWaysBesideDecimalCommas(String typed) {
        assertInstanceOf(
                NumberText.Ambiguous.class, NumberText.parse(typed, NumberText.Marks.COMMA, NumberSymbols.ANY));
    }

    @ParameterizedTest
    @ValueSource(strings = {"01,234", "0 912", "00,5.1", "9 7", "0.912 0.905", "240, lost ~10", "12 -> 7"})
    void refusesASlipAndASecondValue(String typed) {
        assertEquals("number-unreadable", fault(typed).code().word());
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
