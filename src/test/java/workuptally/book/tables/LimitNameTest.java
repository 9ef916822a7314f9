package workuptally.book.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import workuptally.book.words.Range;
import workuptally.examples.SmallBook;
import workuptally.model.Limit;
import workuptally.model.Limits;

/** Names and ranges of settings; the ways of writing are common practice. */
class LimitNameTest {

    @ParameterizedTest
    @CsvSource({
        "Container fill (%), Container fill, %",
        "container fill %, Container fill, %",
        "'Container fill, %', Container fill, %",
        "Container fills, Container fill, ''",
        "Room temperature [°C], Room temperature, °C",
        "Waiting day (d), Waiting days, d",
        "Layer limit (% of theory), Layer limit, % of theory",
        "Detection limits HPLC (mg/mL), Detection limit HPLC, mg/mL",
        "LC-MS counts, LC-MS counts, ''"
    })
    void aUnitBehindANameOrAPluralChangesNoName(String typed, String title, String unit) {
        LimitName name = LimitName.of(typed);
        assertEquals(title, name.limit().orElseThrow().title());
        assertEquals(unit, name.unit());
    }

    @ParameterizedTest
    @CsvSource({
        "Runs on hold, Hold runs",
        "Holding runs, Hold runs",
        "Do not release, Hold runs",
        "Freeze, Hold runs",
        "Loss limit, Layer limit; Run limit",
        "Verlustgrenze, Layer limit; Run limit",
        "Prepared by, ''",
        "Limit of a layer, Layer limit",
        "Fill of container, Container fill",
        "Container fil, Container fill",
        "Container limit, ''",
        "Funnel, Funnel fill; Funnel fill with gas; Funnel fill stop",
        "Balance room, ''"
    })
    void anotherNameIsAskedAboutWhereItMayBeMeantForOne(String typed, String near) {
        LimitName name = LimitName.of(typed);
        assertTrue(name.limit().isEmpty());
        assertEquals(near, name.near().stream().map(Limit::title).collect(Collectors.joining("; ")));
    }

    /** The unit of the list itself may stand in the cell. */
    @ParameterizedTest
    @CsvSource({"0.05 % of theory, 0.05", "'0,5 % der Theorie', 0.5", "1 %, 1", "1 % yield, 2"})
    void whatAPercentageIsOfMayStandInItsCell(String value, double percent) {
        Limits limits = SmallBook.reaction().limit("Layer limit", value).book().limits();
        assertEquals(percent, limits.value(Limit.LAYER_LIMIT), 0);
        assertEquals(percent == 2, !limits.unread().isEmpty());
    }

    @ParameterizedTest
    @EnumSource(Limit.class)
    void everyNameIsItsOwnAndEveryDefaultIsAllowed(Limit limit) {
        assertEquals(limit, LimitName.of(limit.title()).limit().orElseThrow());
        Range range = LimitRanges.of(limit);
        assertTrue(limit.defaultValue().isEmpty()
                || range.holds(limit.defaultValue().getAsDouble()));
    }

    @Test
    void noVesselIsAllowedToHoldMoreThanItself() {
        assertTrue(Arrays.stream(Limit.values())
                .filter(limit -> limit.title().contains("fill"))
                .noneMatch(limit -> LimitRanges.of(limit).holds(100.1)));
    }
}
