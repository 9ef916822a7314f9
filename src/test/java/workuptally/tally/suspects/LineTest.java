package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** An entry of 10 that a sum takes once and a difference takes away twice. */
class LineTest {
    private static final double EPSILON = 1e-9;

    private static Map<String, Check> checks(double entry) {
        Map<String, Check> all = new LinkedHashMap<>();
        all.put("sum", new Check("sum", entry - 4, -1, 1, 0.5));
        all.put("difference", new Check("difference", 14 - 2 * entry, -1, 1, 0.5));
        all.put("fits", new Check("fits", entry / 100, -1, 1, 0.5));
        return all;
    }

    private static Line line() {
        return new Line(10, 0.1, checks(10.1));
    }

    @Test
    void anEntryMattersWhereItMovesWhatIsOff() {
        assertTrue(line().moves(checks(10)));
        // sum 0, difference 6 less 8: off by -1 of -2
        Map<String, Check> onlyFits = checks(10);
        onlyFits.remove("sum");
        onlyFits.remove("difference");
        assertFalse(line().moves(onlyFits));
        assertFalse(new Line(10, 0.1, checks(10)).moves(checks(10)));
        assertFalse(new Line(10, 0.1, Map.of()).moves(checks(10)));
    }

    @Test
    void whatSettlesIsTheLeastSquaresOfWhatIsOff() {
        // each to its middle, by one width: the sum wants 4, the difference 7 with slope -2: (6·1 + 6·2)/(1 + 4) = 3.6
        // less
        assertEquals(6.4, line().settling(checks(10)).orElseThrow(), EPSILON);
    }

    @Test
    void nothingSettlesWhatTheEntryDoesNotMove() {
        assertTrue(new Line(10, 0.1, checks(10)).settling(checks(10)).isEmpty());
        assertTrue(new Line(10, 0.1, Map.of()).settling(checks(10)).isEmpty());
        Map<String, Check> fits = new LinkedHashMap<>(Map.of("fits", checks(10).get("fits")));
        assertTrue(line().settling(fits).isEmpty());
    }

    @Test
    void aWindowMovesWithItsEntry() {
        // a residual of 3 in a window from 0 to 2, which the small change of 1 makes 0 to 4: the middle moves as well
        Map<String, Check> typed = Map.of("w", new Check("w", 3, 0, 2, 0.1));
        Line wider = new Line(5, 1, Map.of("w", new Check("w", 3, 0, 4, 0.1)));
        // from the middle 2, and one less for each step
        assertEquals(7, wider.settling(typed).orElseThrow(), EPSILON);
    }

    @Test
    void aChangeMovesTheChecksByItsMultipleOfTheNudge() {
        Map<String, Check> moved = checks(10);
        line().move(moved, checks(10), -3);
        assertEquals(3, moved.get("sum").residual(), EPSILON);
        assertEquals(0, moved.get("difference").residual(), EPSILON);
    }

    @Test
    void twoChangesAddUp() {
        Map<String, Check> typed = checks(10);
        Map<String, Check> moved = checks(10);
        line().move(moved, typed, -3);
        line().move(moved, typed, 1);
        assertEquals(4, moved.get("sum").residual(), EPSILON);
        assertEquals(-2, moved.get("difference").residual(), EPSILON);
    }

    @Test
    void theWindowOfTwoChangesMovesByBoth() {
        Map<String, Check> typed = Map.of("w", new Check("w", 3, 0, 2, 0.1));
        Map<String, Check> moved = new LinkedHashMap<>(typed);
        Line wider = new Line(5, 1, Map.of("w", new Check("w", 4, -1, 4, 0.2)));
        wider.move(moved, typed, 1);
        wider.move(moved, typed, 2);
        Check check = moved.get("w");
        assertEquals(6, check.residual(), EPSILON);
        assertEquals(-3, check.low(), EPSILON);
        assertEquals(8, check.high(), EPSILON);
        // the uncertainty is that of the last change, 0.1 and twice 0.1 more
        assertEquals(0.3, check.standardUncertainty(), EPSILON);
    }

    @Test
    void aCheckThatIsGoneWithTheChangeStandsAsItWas() {
        Map<String, Check> moved = checks(10);
        new Line(10, 0.1, Map.of()).move(moved, checks(10), -3);
        assertEquals(checks(10), moved);
        line().move(moved, Map.of(), -3);
        assertEquals(checks(10), moved);
    }
}
