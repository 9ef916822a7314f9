package workuptally.report.view.firstpage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.model.Severity;

/** Seven lines at most, and no stop that is not named with its run. */
class FewActionsTest {
    private static final List<String> RUNS =
            IntStream.rangeClosed(1, 40).mapToObj(i -> "R-%02d".formatted(i)).toList();

    private static RankedAction action(Severity severity, String run, double grams) {
        return new RankedAction(
                severity == Severity.STOP ? 2 : 3,
                new UrgentAction(severity, run, List.of(run), "do something about " + run, OptionalDouble.of(grams)),
                "wrong at " + run,
                Map.of(run, grams));
    }

    private static List<UrgentAction> lines(int stops, int holds) {
        List<RankedAction> all = new ArrayList<>();
        for (int i = 0; i < stops + holds; i++) {
            all.add(action(i < stops ? Severity.STOP : Severity.HOLD, RUNS.get(i), 1 + i));
        }
        all.sort(Comparator.comparingInt(RankedAction::rank));
        return new FewActions(RUNS).of(all, 7);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "3, 4", "6, 0", "7, 0", "6, 1", "6, 3", "7, 5", "8, 0", "9, 9", "20, 20"})
    void everyStopIsNamedWithItsRun(int stops, int holds) {
        List<UrgentAction> lines = lines(stops, holds);
        assertEquals(Math.min(7, stops + holds), lines.size());
        for (int i = 0; i < stops; i++) {
            String run = RUNS.get(i);
            assertTrue(
                    lines.stream()
                            .anyMatch(l -> l.severity() == Severity.STOP
                                    && l.runs().contains(run)
                                    && l.text().contains(run)),
                    run + " in " + lines);
        }
        long holding = lines.stream()
                .filter(l -> l.severity() == Severity.HOLD)
                .flatMap(l -> l.runs().stream())
                .distinct()
                .count();
        assertEquals(holds, holding);
    }

    @Test
    void holdsShareALineThatNamesTheirRunsAndAddsTheirGramsOnce() {
        List<RankedAction> all = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            all.add(action(Severity.STOP, RUNS.get(i), 1));
        }
        all.add(action(Severity.HOLD, "R-10", 2));
        all.add(action(Severity.HOLD, "R-10", 0.5));
        all.add(action(Severity.HOLD, "R-11", 3));
        all.add(action(Severity.HOLD, "R-12", 4));
        UrgentAction last = new FewActions(RUNS).of(all, 7).get(6);
        assertEquals(
                "Keep the layers; settle what is open: R-10 to 12", last.text().replace('\u00A0', ' '));
        assertEquals("3 runs", last.where());
        // of R-10 the 2 g: the 0.5 g are the same product
        assertEquals(9, last.gramsAtStake().orElseThrow(), 1e-12);
    }

    @Test
    void whatConcernsNoRunKeepsItsLine() {
        List<RankedAction> all = new ArrayList<>();
        UrgentAction due = new UrgentAction(
                Severity.CHECK, "containers", List.of(), "Have collected today: W-1", OptionalDouble.empty());
        for (int i = 0; i < 9; i++) {
            all.add(action(Severity.HOLD, RUNS.get(i), 9 - i));
        }
        all.add(new RankedAction(3, due, "containers", Map.of()));
        List<UrgentAction> lines = new FewActions(RUNS).of(all, 7);
        assertTrue(lines.contains(due), lines.toString());
        assertEquals(7, lines.size());
    }
}
