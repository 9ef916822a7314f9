package workuptally.tally.containers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.tally.containers.ContainerState.Part;
import workuptally.tally.containers.ContainerTally.Age;
import workuptally.tally.containers.ContainerTally.Reconciliation;

/** Containers with invented contents in round numbers; hand arithmetic. */
class ContainerStateTest {
    private static ContainerState state(Object... namesAndGrams) {
        Map<String, Double> grams = new LinkedHashMap<>();
        for (int i = 0; i < namesAndGrams.length; i += 2) {
            grams.put((String) namesAndGrams[i], (Double) namesAndGrams[i + 1]);
        }
        return new ContainerState(grams, 2500, OptionalDouble.of(10));
    }

    private static List<Double> percents(ContainerState state, OptionalDouble traces) {
        return state.composition(traces).stream().map(Part::massPercent).toList();
    }

    @Test
    void fillIsVolumeOverCapacity() {
        assertEquals(25, state("A", 1.0).fillPercent().orElseThrow(), 1e-12);
        assertEquals(2.5, state("A", 1.0).litres(), 1e-12);
        assertEquals(OptionalDouble.empty(), new ContainerState(Map.of(), 0, OptionalDouble.empty()).fillPercent());
    }

    /** Thirds are 33.33 %: one of them has the tenth that is left. Sevenths of 14.2857 %: the five largest remainders do. */
    @Test
    void tenthsAddUpToAHundred() {
        assertEquals(List.of(33.4, 33.3, 33.3), percents(state("A", 1.0, "B", 1.0, "C", 1.0), OptionalDouble.empty()));
        // 4/7 = 57.142 %, 2/7 = 28.571 %, 1/7 = 14.285 %: floors 57.1, 28.5, 14.2; remainders 0.42, 0.71, 0.85 tenths
        assertEquals(List.of(57.1, 28.6, 14.3), percents(state("A", 4.0, "B", 2.0, "C", 1.0), OptionalDouble.empty()));
        assertEquals(List.of(), percents(state(), OptionalDouble.empty()));
    }

    @Test
    void largestPartStandsFirstAndEqualOnesByName() {
        assertEquals(
                List.of("C", "A", "B"),
                state("B", 1.0, "C", 2.0, "A", 1.0).composition(OptionalDouble.empty()).stream()
                        .map(Part::substance)
                        .toList());
    }

    /** Below 1 % of 1000 g: 9 and 5 g are traces together, 10 g is none; a single one keeps its name. */
    @Test
    void severalTracesStandTogether() {
        List<Part> parts = state("A", 976.0, "B", 9.0, "C", 5.0, "D", 10.0).composition(OptionalDouble.of(1));
        assertEquals(
                List.of("A", "traces", "D"), parts.stream().map(Part::substance).toList());
        assertEquals(14, parts.get(1).massGrams(), 1e-9);
        assertEquals(
                List.of("A", "B"),
                state("A", 995.0, "B", 5.0).composition(OptionalDouble.of(1)).stream()
                        .map(Part::substance)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({"traces, true", "Traces, true", "acetone, false"})
    void ourWordsAreNoMaterials(String name, boolean ours) {
        assertEquals(ours, ContainerState.isOurWord(name));
    }

    /** 1040 g in the ledger, 1000 g on the balance; 40 g agree, less do not. */
    @Test
    void ledgerAndBottleAgreeWithinTheirTolerance() {
        assertEquals(40, new Reconciliation(1040, 1000, 40).differenceGrams(), 1e-12);
        assertTrue(new Reconciliation(1040, 1000, 40).agrees());
        assertFalse(new Reconciliation(1040, 1000, 39).agrees());
        assertFalse(new Reconciliation(960, 1000, 39).agrees());
    }

    /** Due on Sunday 2026-03-08: the last working day is Friday the 6th. */
    @ParameterizedTest
    @CsvSource({
        "2026-03-05, false, false",
        "2026-03-06, false, true",
        "2026-03-08, false, true",
        "2026-03-09, true, false"
    })
    void limitPassesAndIsDueOnTheLastWorkingDayBefore(LocalDate day, boolean overdue, boolean dueNow) {
        Age age = new Age(day, 30, Optional.of(LocalDate.of(2026, 3, 8)), Optional.of(LocalDate.of(2026, 3, 6)));
        assertEquals(overdue, age.overdue());
        assertEquals(dueNow, age.dueNow());
        assertFalse(new Age(day, 30, Optional.empty(), Optional.empty()).dueNow());
    }
}
