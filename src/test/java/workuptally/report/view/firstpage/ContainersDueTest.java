package workuptally.report.view.firstpage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.model.Severity;
import workuptally.report.view.lines.ContainerLine;
import workuptally.report.view.wording.ReadableNumbers;

/** A container for which no working day is left stands on page one; opened 2025-12-08 it may be open until Sunday 2026-03-08. */
class ContainersDueTest {
    private static Review on(String day) {
        return SmallBook.reaction()
                .row("containers", "Container", "W-1", "Waste stream", "Aqueous, neutral", "Capacity (L)", "5")
                .but("containers", "Tare (g)", "400")
                .but("containers", "Opened", "2025-12-08")
                .limit("Container days", "90")
                .limit("As of", day)
                .review();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-05, 1 day left of 90 days",
        "2026-03-06, last working day today",
        "2026-03-08, due today",
        "2026-03-09, 1 day overdue"
    })
    void daysLeftAreThoseToTheLastWorkingDay(String day, String words) {
        assertEquals(
                words,
                ContainerLine.of(on(day), new ReadableNumbers('.')).get(0).dayWords());
    }

    @ParameterizedTest
    @CsvSource({"2026-03-06, last working day", "2026-03-09, overdue"})
    void pageOneAsksForItsCollection(String day, String words) {
        Review review = on(day);
        UrgentAction action =
                UrgentAction.of(review, new ReadableNumbers('.'), 7).get(0);
        assertEquals("Have collected today: W-1 (" + words + ")", action.text());
        assertEquals(Severity.CHECK, action.severity());
        assertEquals(
                "1 container",
                TopFigure.of(review, new ReadableNumbers('.')).get(0).value());
    }

    @Test
    void containerWithADayLeftIsNoMatterOfToday() {
        assertTrue(
                UrgentAction.of(on("2026-03-05"), new ReadableNumbers('.'), 7).isEmpty());
    }
}
