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
        "positive, false"
    })
    void onlyANegativeWithNothingElseIsOne(String typed, boolean negative) {
        assertEquals(negative, TestWords.sayNegative(typed));
    }
}
