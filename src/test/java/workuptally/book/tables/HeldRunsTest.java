package workuptally.book.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Limit;
import workuptally.model.Limits;

/** Ways in which people name several runs; common practice. */
class HeldRunsTest {
    private static SmallBook book() {
        SmallBook book = SmallBook.empty();
        for (String id : List.of("AM-1", "AM-2", "AM-3", "B 4", "Q/7", "A+B")) {
            book.row("runs", "Run", id);
        }
        return book;
    }

    private static Limits limits(String held) {
        return book().limit("Hold runs", held).book().limits();
    }

    @ParameterizedTest
    @CsvSource({
        "AM-1; AM-2, AM-1|AM-2",
        "'am-1, am-2', AM-1|AM-2",
        "am1+am 2, AM-1|AM-2",
        "AM–1/AM–2, AM-1|AM-2",
        "AM-1 AM-2, AM-1|AM-2",
        "AM-1 and AM-3, AM-1|AM-3",
        "AM-1 to AM-3, AM-1|AM-2|AM-3",
        "AM-1 - 3, AM-1|AM-2|AM-3",
        "AM-2 bis AM-3, AM-2|AM-3",
        "'runs AM-1 (ask first), AM-2 [see page 3]', AM-1|AM-2",
        "'\"AM-1\"', AM-1",
        "b4 Q/7, B 4|Q/7",
        "A+B; AM-1, A+B|AM-1",
        "all runs, X1|AM-1|AM-2|AM-3|B 4|Q/7|A+B"
    })
    void runsAreFoundHoweverTheyAreJoined(String typed, String ids) {
        Limits limits = limits(typed);
        assertEquals(ids, String.join("|", limits.heldRuns()));
        assertEquals(List.of(), limits.unread());
    }

    @ParameterizedTest
    @CsvSource({"none", "-", "no", "keine"})
    void noneHoldsNone(String typed) {
        assertEquals(List.of(), limits(typed).heldRuns());
        assertEquals(List.of(), limits(typed).unread());
    }

    @ParameterizedTest
    @CsvSource({
        "AM-9, ''",
        "AM-1; AM-9, AM-1",
        "AM-1 to AM-9, AM-1",
        "yes, ''",
        "tbd, ''",
        "all but AM-3, X1|AM-1|AM-2|AM-3|B 4|Q/7|A+B"
    })
    void whatNamesNoRunIsReportedAndHoldsTheRest(String typed, String ids) {
        Limits limits = limits(typed);
        assertEquals(ids, String.join("|", limits.heldRuns()));
        assertEquals(List.of(Limit.HOLD_RUNS), limits.unread());
    }

    @Test
    void aSecondRowLiftsNoHold() {
        SmallBook book = book().limit("Hold runs", "AM-1").limit("Hold runs", "AM-2");
        assertEquals(List.of("AM-1", "AM-2"), book.book().limits().heldRuns());
    }
}
