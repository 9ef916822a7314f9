package workuptally.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.format.CellFormat;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.files.NumberFormat;
import workuptally.book.files.NumberFormats;
import workuptally.book.files.RawCell;

/** What a number format shows is what counts; the second opinion on that is the spreadsheet library's own formats (Apache POI). */
@Tag("slow")
class ShownNumbersTest {
    private static final List<String> DIGITS =
            List.of("0", "0.0", "0.00", "0.000", "#,##0", "#,##0.00", "0.0#", "0.00,", "0,,", "00.0", "0%", "0.0%");
    private static final List<String> BEFORE =
            List.of("", "\"<\"", "\"< \"", "\"ca. \"", "\"~\"", "[Red]", "\"m = \"", "$", "[$€-407] ", "_(* ", "\\≈");
    private static final List<String> AFTER = List.of(
            "",
            "\" mg\"",
            "\" g\"",
            "\" mg (wet)\"",
            "\" ng\"",
            "[$ µL]",
            "\" x10\"",
            "\"‰\"",
            "\" %\"",
            "\\ \\g",
            "\" (n=2)\"",
            "_)",
            "\" ?\"");
    /** Without empty last sections, which the library drops; they are tried below. */
    private static final List<String> TAILS =
            List.of("", ";-0.0", ";(0.0)", ";-0.0;\"n.d.\"", ";-0.0;\"-\"", ";[Red]0.0");

    private static final List<String> VALUES = List.of("0", "0.05", "0.912", "13620", "-2.5");

    @Test
    void whatIsShownAgreesWithTheLibraryOverThousandsOfFormats() {
        List<String> differing = new ArrayList<>();
        int compared = 0;
        for (String code : codes()) {
            for (String value : VALUES) {
                String theirs = tidy(CellFormat.getInstance(Locale.ROOT, code).apply(Double.parseDouble(value)).text);
                String ours =
                        tidy(NumberFormat.of(code).show(new BigDecimal(value)).orElse(""));
                compared++;
                if (!ours.equals(theirs)) {
                    differing.add(code + " of " + value + ": '" + ours + "', library '" + theirs + "'");
                }
            }
        }
        assertTrue(compared > 20_000, compared + " compared");
        assertEquals(List.of(), differing.subList(0, Math.min(25, differing.size())), differing.size() + " differ");
    }

    @Test
    void noNumberIsReadSilentlyOtherwiseThanItIsShown() {
        List<String> silent = new ArrayList<>();
        for (String code : codes()) {
            for (String value : VALUES) {
                NumberText read =
                        CellNumber.read(new RawCell(0, RawCell.Type.NUMBER, value, NumberFormats.of(code, false)));
                String shown = tidy(CellFormat.getInstance(Locale.ROOT, code).apply(Double.parseDouble(value)).text);
                if (read instanceof NumberText.Number number && !says(shown, number)) {
                    silent.add(code + " of " + value + " shown '" + shown + "' read " + number);
                }
            }
        }
        assertEquals(List.of(), silent.subList(0, Math.min(40, silent.size())), silent.size() + " silent");
    }

    private static List<String> codes() {
        List<String> codes = new ArrayList<>();
        for (String before : BEFORE) {
            for (String digits : DIGITS) {
                for (String after : AFTER) {
                    for (String tail : TAILS) {
                        codes.add(before + digits + after + tail);
                    }
                }
            }
        }
        return codes;
    }

    /** Whether a shown text says the number that was read, to its decimals, and its limit. */
    private static boolean says(String shown, NumberText.Number number) {
        var digits = java.util.regex.Pattern.compile("-?\\d+(?:\\.\\d+)?").matcher(shown.replace(",", ""));
        if (!digits.find()) {
            return false;
        }
        BigDecimal seen = new BigDecimal(digits.group());
        BigDecimal rounding = new BigDecimal("0.51").movePointLeft(seen.scale());
        boolean limit = shown.contains("<") == (number.qualifier() == workuptally.model.Field.Qualifier.BELOW);
        return limit && seen.subtract(number.value()).abs().compareTo(rounding) <= 0;
    }

    /**
     * Without spaces and the commas between thousands, which say nothing, the sign of a zero, and the brackets that the library leaves
     * around a unit written as a currency.
     */
    private static String tidy(String shown) {
        return shown.replaceAll("[\\s\\u00A0]", "")
                .replaceAll("(?<=\\d),(?=\\d{3})", "")
                .replaceAll("\\[\\$([^\\]]*)\\]", "$1")
                .replaceAll("^-(?=\\D*0+(?:\\.0+)?(?![.\\d]))", "");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"<\"0.00|0.05|BELOW|0.05|",
                "0.00\" mg\"|912|EXACT|912|MILLIGRAM",
                "0.0\"‰\"|5|EXACT|5|PERMILLE",
                "\"ca. \"0.0|12.34|ABOUT|12.34|",
                "[<1]0.00\" mg\";0.0\" g\"|0.5|EXACT|0.5|MILLIGRAM",
                "[<1]0.00\" mg\";0.0\" g\"|5|EXACT|5|GRAM",
                "0.0\" % w/w\"|97|EXACT|97|MASS_PERCENT"
            })
    void whatAFormatAddsCounts(String code, String stored, String qualifier, String value, String unit) {
        NumberText.Number number = assertInstanceOf(NumberText.Number.class, read(code, stored));
        assertEquals(qualifier, number.qualifier().name());
        assertEquals(0, number.value().compareTo(new BigDecimal(value)));
        assertEquals(unit == null ? "" : unit, number.unit().map(Enum::name).orElse(""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                ";;;|0.912",
                "0.00,|13620",
                "0.00,\"g\"|13620",
                "0\" x10\"|5",
                "0.0\" mg (wet)\"|5",
                "0.0\" ng\"|5",
                "0;-0;;@|0",
                "0.00;0.00|-5",
                "$0.00|5",
                "#|0",
                "#|0.4",
                "#.##|0",
                "00\".\"00|1234",
                "0.0.0|12.34",
                "0.0\"×10³\"|0",
                "0.0\" to 5\"|5",
                "\"5.0\"|5",
                "A/P|0.4",
                "@\" g\"|5",
                "[<]0.0|5"
            })
    void whatCannotBeReadWithCertaintyIsRefused(String code, String stored) {
        assertEquals(
                "shown-otherwise",
                assertInstanceOf(NumberText.Fault.class, read(code, stored))
                        .code()
                        .word());
    }

    /** As LibreOffice 7.4 shows them; a format that says a limit in words is a limit at what it says. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[<0.1]\"<0.1\";0.00|0.02|BELOW|0.1",
                "0.00;-0.00;\"<0.10\"|0|BELOW|0.10",
                "[>100]\">100\";0.00|250|ABOVE|100",
                "[<1e3]0.0;0\" kg\"|13620|EXACT|13620",
                "# ?/8|0.4|EXACT|0.4",
                "0 0/4|12.34|EXACT|12.34",
                "#|12.34|EXACT|12.34",
                "0.0;@|-2.5|EXACT|-2.5"
            })
    void whatIsShownIsWhatIsRead(String code, String stored, String qualifier, String value) {
        NumberText.Number number = assertInstanceOf(NumberText.Number.class, read(code, stored));
        assertEquals(qualifier, number.qualifier().name());
        assertEquals(0, number.value().compareTo(new BigDecimal(value)));
    }

    @Test
    void zeroShownAsNotDetectedOrAsADashIsNoZero() {
        assertInstanceOf(NumberText.NotDetected.class, read("0.00;-0.00;\"n.d.\"", "0"));
        assertInstanceOf(NumberText.Nothing.class, read("0.00;-0.00;\"-\"", "0"));
        assertInstanceOf(NumberText.Nothing.class, read("_(* #,##0.00_);_(* (#,##0.00);_(* \"-\"??_)", "0"));
    }

    private static NumberText read(String code, String stored) {
        return CellNumber.read(new RawCell(0, RawCell.Type.NUMBER, stored, NumberFormats.of(code, false)));
    }
}
