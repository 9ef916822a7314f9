package workuptally.book.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TestWordsTest {
    @ParameterizedTest
    @CsvSource({
        "negative, true",
        "no more gas, true",
        "gas evolution stopped, true",
        "keine Gasentwicklung mehr, true",
        "peroxide test strip: negative, true",
        "negative (weak blue), false",
        "no gas test done, false",
        "more gas, false",
        "strip, false",
        "'neg., AB', true",
        "negative KI 3/12, true",
        "negative 2/2, true",
        "2 of 2 negative, true",
        "'1st neg, 2nd POS', false",
        "neg/POS, false",
        "1 of 2 negative, false",
        "negative 1/2, false",
        "'neg; starch paper ROT', false",
        "'2 tests: neg, NOK', false",
        "positive, false"
    })
    void onlyANegativeWithNothingElseIsOne(String typed, boolean negative) {
        assertEquals(negative, TestWords.sayNegative(typed));
    }
}
