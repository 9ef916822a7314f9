package workuptally.book.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes as ISO/IEC 29500-1, 18.8.31 describes them. */
class NumberFormatsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "General|PLAIN|0",
                "0|PLAIN|0",
                "0.00|PLAIN|2",
                "#,##0.000|PLAIN|3",
                "0.0##|PLAIN|1",
                "0.00;[Red]-0.00|PLAIN|2",
                "0.00E+00|PLAIN|2",
                "0.0\" mL\"|DRESSED|1",
                "0.00\\ \\g|DRESSED|2",
                "0.0\" days old\"|DRESSED|1",
                "_-* #,##0.00_-|PLAIN|2",
                "0%|PERCENT|0",
                "0.00%|PERCENT|2",
                "yyyy-mm-dd|DATE_FROM_1900|0",
                "[$-409]d mmm yyyy;@|DATE_FROM_1900|0",
                "[h]:mm|DATE_FROM_1900|0",
                "mm:ss.0|DATE_FROM_1900|0"
            })
    void tellsWhatACodeShows(String code, String kind, int decimals) {
        ShownAs shown = NumberFormats.of(code, false);
        assertEquals(kind, shown.kind().name());
        assertEquals(decimals, shown.decimals());
    }

    @ParameterizedTest
    @CsvSource({
        "0, PLAIN, 0",
        "1, PLAIN, 0",
        "2, PLAIN, 2",
        "9, PERCENT, 0",
        "10, PERCENT, 2",
        "14, DATE_FROM_1904, 0",
        "22, DATE_FROM_1904, 0",
        "46, DATE_FROM_1904, 0",
        "49, PLAIN, 0"
    })
    void knowsTheFormatsThatHaveANumberOnly(int id, String kind, int decimals) {
        ShownAs shown = NumberFormats.builtIn(id, true);
        assertEquals(kind, shown.kind().name());
        assertEquals(decimals, shown.decimals());
    }
}
