package workuptally.book.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.LimitAnswer;
import workuptally.model.LimitKind;

/** Settings that ask a question are understood when they are read. */
class LimitAnswersTest {
    private static boolean isAsked(Book book) {
        return book.findings().stream().anyMatch(f -> f.code() == FindingCode.CHOICE_UNKNOWN);
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "Yes", "ja", "oui", "true"})
    void yesIsYesInTheLanguagesOfBooks(String typed) {
        Book book = SmallBook.reaction().limit("TLC counts", typed).book();
        assertTrue(book.limits().isYes(Limit.TLC_COUNTS));
        assertEquals(typed, book.limits().text(Limit.TLC_COUNTS));
        assertFalse(isAsked(book));
    }

    @ParameterizedTest
    @ValueSource(strings = {"no", "nein", "false"})
    void noIsNo(String typed) {
        Book book = SmallBook.reaction().limit("Experience counts", typed).book();
        assertFalse(book.limits().isYes(Limit.EXPERIENCE_COUNTS));
        assertFalse(isAsked(book));
    }

    @ParameterizedTest
    @ValueSource(strings = {"only with a standard", "purified", "sometimes"})
    void whatIsNeitherIsAskedAboutAndCountsAsBlank(String typed) {
        Book book = SmallBook.reaction().limit("TLC counts", typed).book();
        assertFalse(book.limits().isYes(Limit.TLC_COUNTS));
        assertEquals(Optional.empty(), book.limits().answer(Limit.TLC_COUNTS));
        assertTrue(isAsked(book));
    }

    @Test
    void stageOfTheYieldIsOneOfTwo() {
        Book purified = SmallBook.reaction().limit("Yield reported", "Purified").book();
        assertEquals(Optional.of(LimitAnswer.PURIFIED), purified.limits().answer(Limit.YIELD_REPORTED));
        Book yes = SmallBook.reaction().limit("Yield reported", "yes").book();
        assertEquals(Optional.empty(), yes.limits().answer(Limit.YIELD_REPORTED));
        assertTrue(isAsked(yes));
    }

    @Test
    void onlyUncertaintiesAreAbove0() {
        assertTrue(Limit.LAYER_VOLUME_RELATIVE.isUncertainty());
        assertFalse(Limit.CLOSURE_WIDTH.isUncertainty());
        assertEquals(LimitKind.DAY, Limit.AS_OF.kind());
    }
}
