package workuptally.report.view.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of runs in few words; every name can be got back from what is said. */
class RunNamesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "R26-041 | R26-041",
                "R26-041 R26-045 | R26-041, 045",
                "R26-041 R26-042 | R26-041, 042",
                "R26-041 R26-042 R26-043 R26-044 R26-048 | R26-041 to 044, 048",
                "S01 S02 S03 T03 T05 | S01 to 03, T03, 05",
                "R-9 R-10 R-11 R-12 | R-9, R-10 to 12",
                "7 8 9 | 7 to 9",
                "Lauf-a Lauf-b Lauf-c | Lauf-a, Lauf-b, Lauf-c",
                "B-1a B-2a B-3a | B-1a, B-2a, B-3a",
                "20260302000017 20260302000018 20260302000019 | 20260302000017, 20260302000018, 20260302000019",
                "R26-043 R26-042 R26-041 | R26-043, 042, 041"
            })
    void whatTheNameBeforeSaidIsNotSaidAgain(String runs, String expected) {
        assertEquals(expected, RunNames.listed(List.of(runs.split(" "))).replace('\u00A0', ' '));
    }

    /** {@code 4 ML4} would read as four of something. */
    @Test
    void shortNumberAloneIsNoName() {
        assertEquals(List.of("PC-3", "PC-4"), RunNames.each(List.of("PC-3", "PC-4")));
        assertEquals(List.of("R-11", "R-12"), RunNames.each(List.of("R-11", "R-12")));
        assertEquals(List.of("R26-041", "042"), RunNames.each(List.of("R26-041", "R26-042")));
    }

    @Test
    void whatHasNoRoomIsCounted() {
        List<String> runs = List.of("R-11", "R-13", "R-15", "R-17", "R-19", "R-21", "R-23", "R-25");
        assertEquals("R-11, 13, 15 and 5 more runs", RunNames.listed(runs, 30));
        assertEquals("R-11, 13, 15, 17, 19, 21, 23, 25", RunNames.listed(runs, 32));
    }
}
