package workuptally.judgement.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
    @ParameterizedTest
    @CsvSource({
        "134, 2, 130",
        "99.7, 2, 100",
        "2, 2, 2.0",
        "0.0304, 2, 0.030",
        "0.0000123, 2, 0.000012",
        "2503, 3, 2500",
        "0, 2, 0.0"
    })
    void noFigureIsWrittenAsAPowerOfTen(double number, int digits, String text) {
        assertEquals(text, Figures.of(number, digits));
    }
}
