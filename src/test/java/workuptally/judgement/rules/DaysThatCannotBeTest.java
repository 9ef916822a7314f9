package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;

/** A run that was done is not of the year to come; one that is planned may be. */
class DaysThatCannotBeTest {
    @ParameterizedTest
    @CsvSource({"2027-03-02,isolated,true", "2026-03-02,isolated,false", "2027-03-02,planned,false"})
    void aRunAfterTheDayOfTheBookIsTold(String day, String status, boolean told) {
        SmallBook book = SmallBook.reaction()
                .first("runs", "Date", day)
                .first("runs", "Status", status)
                .row("limits", "Name", "As of", "Value", "2026-03-06");
        assertEquals(told, book.review().findings().stream().anyMatch(f -> f.code() == FindingCode.DAY_CANNOT_BE));
    }
}
