package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.measure.Readings;
import workuptally.tally.amounts.Content;
import workuptally.tally.balance.Closure.Candidate;
import workuptally.tally.balance.Closure.Looked;
import workuptally.tally.balance.Closure.Term;
import workuptally.tally.balance.Closure.Verdict;

/** Balances in round numbers, 0.2 g for each per cent and a standard uncertainty of 1 %, one-sided reach 1.645 %; hand arithmetic. */
class ClosureTest {
    private static final Readings READINGS = new Readings();

    private static Closure closure(Verdict verdict, double unaccounted, Content.Kind kind, Candidate... candidates) {
        return new Closure(
                "S",
                READINGS.exact(100),
                READINGS.enter("closure", "%", 100 - unaccounted, 1, () -> "invented"),
                2,
                2,
                verdict,
                unaccounted,
                unaccounted,
                0.2 * unaccounted,
                "P",
                List.of(new Term("C1", "Q", 1, READINGS.exact(3), 3, kind)),
                List.of(candidates));
    }

    private static Closure lacking(double unaccounted) {
        return closure(Verdict.OPEN, unaccounted, Content.Kind.MEASURED);
    }

    @Test
    void theWorstIsTheOneThatFoundTooMuch() {
        Closure closes = closure(Verdict.CLOSES, 9, Content.Kind.MEASURED);
        Closure undecided = closure(Verdict.CANNOT_DECIDE, 8, Content.Kind.MEASURED);
        Closure open = lacking(5);
        Closure wider = lacking(6);
        Closure over = closure(Verdict.OVER, -4, Content.Kind.MEASURED);
        assertEquals(Optional.of(undecided), Closure.worst(List.of(closes, undecided)));
        assertEquals(Optional.of(wider), Closure.worst(List.of(undecided, open, wider)));
        assertEquals(Optional.of(over), Closure.worst(List.of(wider, over, closes)));
        assertEquals(Optional.empty(), Closure.worst(List.of()));
    }

    /** Missing at most and at least, 1.645 % either way, and at best. */
    @ParameterizedTest
    @CsvSource({"5, 6.645, 3.355, 5", "-5, 1.645, -6.645, 0", "0, 1.645, -1.645, 0"})
    void whatItLacksHasAReach(double unaccounted, double atMost, double atLeast, double seems) {
        assertEquals(atMost, lacking(unaccounted).unaccountedAtMostPercent(), 1e-9);
        assertEquals(atLeast, lacking(unaccounted).unaccountedAtLeastPercent(), 1e-9);
        assertEquals(seems, lacking(unaccounted).seemsToLackPercent(), 1e-9);
    }

    /** 2 % above, with 3 % that are only known not to be more: 1 % may be missing. */
    @Test
    void boundsMayHoldNothing() {
        assertEquals(1, closure(Verdict.OPEN, -2, Content.Kind.BOUND).seemsToLackPercent(), 1e-9);
        assertEquals(0, closure(Verdict.OPEN, -4, Content.Kind.BOUND).seemsToLackPercent(), 1e-9);
        assertEquals(2, closure(Verdict.OPEN, 2, Content.Kind.BOUND).seemsToLackPercent(), 1e-9);
    }

    /** 0.4 g that were bounded are 2 %; 1.0 g of a by-product 5 % more; what a kept portion holds says nothing. */
    @Test
    void candidatesThatAreBoundedCount() {
        Candidate[] candidates = {
            new Candidate("glass", 0, 0.4, "usual", "rinse"),
            new Candidate("B", 0, 1.0, "assayed nowhere", "assay", Looked.NOWHERE),
            new Candidate("layer A1", 0, 7.0, "not assayed", "assay", Looked.IN_NO_KEPT_PORTION)
        };
        Closure closure = closure(Verdict.OPEN, 5, Content.Kind.MEASURED, candidates);
        assertEquals(2, closure.candidatesAtMostPercent(), 1e-9);
        assertEquals(7, closure.placesAtMostPercent(), 1e-9);
        assertEquals(Double.POSITIVE_INFINITY, lacking(0).placesAtMostPercent());
        assertFalse(candidates[0].withoutAssay());
        assertTrue(candidates[1].withoutAssay() && !candidates[1].keptWithoutAssay());
        assertTrue(candidates[2].keptWithoutAssay());
    }

    @Test
    void countsWhatWasFoundAndWhatIsMissing() {
        assertTrue(lacking(5).counts("p"));
        assertTrue(lacking(5).counts("q"));
        assertFalse(lacking(5).counts("R"));
        assertEquals("the workup of X1", Closure.workupOf("X1"));
    }
}
