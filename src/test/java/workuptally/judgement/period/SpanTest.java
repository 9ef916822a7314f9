package workuptally.judgement.period;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpanTest {
    private static Span days(String from, String to) {
        return new Span(LocalDate.parse(from), LocalDate.parse(to));
    }

    @Test
    void workingWeekIsComparedWithWholeWeeksBeforeIt() {
        assertEquals(
                List.of(days("2026-02-16", "2026-02-22"), days("2026-02-23", "2026-03-01")),
                days("2026-03-02", "2026-03-06").before(2));
    }

    @Test
    void monthIsComparedWithMonthsOfTheirOwnLength() {
        assertEquals(
                List.of(days("2026-01-01", "2026-01-31"), days("2026-02-01", "2026-02-28")),
                days("2026-03-01", "2026-03-31").before(2));
    }

    @Test
    void quarterIsComparedWithQuarters() {
        assertEquals(
                List.of(days("2025-07-01", "2025-09-30"), days("2025-10-01", "2025-12-31")),
                days("2026-01-01", "2026-03-31").before(2));
    }

    @Test
    void otherSpansAreComparedWithAsManyDaysNextToEachOther() {
        assertEquals(
                List.of(days("2026-02-11", "2026-02-20"), days("2026-02-21", "2026-03-02")),
                days("2026-03-03", "2026-03-12").before(2));
    }

    @Test
    void lastDayBeforeTheFirstIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> days("2026-03-06", "2026-03-02"));
    }
}
