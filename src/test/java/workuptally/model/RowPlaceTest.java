package workuptally.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

class RowPlaceTest {
    private static String entry(Map<String, String> ownHeadings, String heading) {
        TablePlace table = new TablePlace("yields.xlsx", "Ausbeuten", true, Map.of("Actual amount", 3), ownHeadings);
        return new RowPlace(table, 5, 5).entry(heading, "aniline", "Charges");
    }

    @Test
    void entryOfTheFormIsNamedByItsHeadingAndTable() {
        assertEquals("Formula of aniline in Charges", entry(Map.of(), "Formula"));
    }

    @Test
    void entryOfAnOwnListIsNamedByTheColumnOfThatList() {
        Map<String, String> own = Map.of("Actual amount", "Einwaage (g)");
        assertEquals("'Einwaage (g)' of aniline in Ausbeuten", entry(own, "Actual amount"));
        assertEquals(
                "Density of aniline, in a column of Ausbeuten that the headings file names", entry(own, "Density"));
    }
}
