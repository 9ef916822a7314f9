package workuptally.book.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.book.files.RawCell;
import workuptally.book.files.ShownAs;

class DateTextTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-03-06",
                "2026/3/6",
                "2026-03-06T15:42",
                "2026-03-06 15:42:00",
                "6.3.2026",
                "06. 03. 2026",
                "6 Mar 2026",
                "6-Mar-2026",
                "6 March 2026",
                "\u00A02026-03-06"
            })
    void readsDaysAsPeopleWriteThem(String typed) {
        assertEquals(LocalDate.of(2026, 3, 6), day(DateText.parse(typed)));
    }

    @ParameterizedTest
    @CsvSource({"13/3/2026, 2026-03-13", "3/13/2026, 2026-03-13", "5/5/2026, 2026-05-05"})
    void readsSlashesWhereOnlyOneReadingIsADay(String typed, LocalDate day) {
        assertEquals(day, day(DateText.parse(typed)));
    }

    @ParameterizedTest
    @CsvSource({
        "02/03/2026;13/03/2026, 2026-03-02",
        "02-03-2026;13/03/2026, 2026-03-02",
        "Mon 02/03/2026;13/03/2026 14:30, 2026-03-02",
        "02/03/2026;03/13/2026, 2026-02-03",
        "02/03/2026;13/03/2026;03/13/2026, open",
        "02/03/2026;05/05/2026, open",
        "02-03-26;13/03/2026, open"
    })
    void otherDatesOfAColumnTellWhetherTheDayComesFirst(String column, String expected) {
        List<String> dates = List.of(column.split(";"));
        DateText read = DateText.parse(dates.get(0), DayOrder.of(dates));
        assertEquals(expected, read instanceof DateText.Day day ? day.day().toString() : "open");
    }

    @ParameterizedTest
    @CsvSource({
        "3/6/2026, date-ambiguous",
        "2026-02-30, date-impossible",
        "31.4.2026, date-impossible",
        "1826-03-06, date-impossible",
        "6 Foo 2026, date-unreadable",
        "yesterday, date-unreadable",
        "46082, date-unreadable",
        "3/26, date-unreadable"
    })
    void refusesWhatIsNoDay(String typed, String code) {
        assertEquals(
                code,
                assertInstanceOf(DateText.Fault.class, DateText.parse(typed))
                        .code()
                        .word());
    }

    /** Serial 46087 is 2026-03-06 counted from 1900, 44625 counted from 1904; 1462 days lie between (ISO/IEC 29500-1, 18.17.4.1). */
    @Test
    void readsStoredDaysOfBothCounts() {
        assertEquals(
                LocalDate.of(2026, 3, 6),
                day(DateText.read(stored("46087", ShownAs.Kind.DATE_FROM_1900), DayOrder.OPEN)));
        assertEquals(
                LocalDate.of(2026, 3, 6),
                day(DateText.read(stored("44625", ShownAs.Kind.DATE_FROM_1904), DayOrder.OPEN)));
        assertEquals(
                LocalDate.of(2026, 3, 6),
                day(DateText.read(stored("46087.75", ShownAs.Kind.DATE_FROM_1900), DayOrder.OPEN)));
    }

    @Test
    void aBareNumberIsNoDate() {
        assertInstanceOf(DateText.Fault.class, DateText.read(stored("46087", ShownAs.Kind.PLAIN), DayOrder.OPEN));
    }

    private static RawCell stored(String number, ShownAs.Kind kind) {
        return new RawCell(0, RawCell.Type.NUMBER, number, new ShownAs(kind, 0));
    }

    private static LocalDate day(DateText read) {
        return assertInstanceOf(DateText.Day.class, read).day();
    }
}
