package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class DryingTest {
    @Test
    void waterIsDissolvedAndEntrained() {
        // By hand: 3 % of 90 g is 2.7 g; 1 mL drops per 100 mL add 0.998 g.
        assertEquals(2.7, Drying.waterToBindGrams(90, 100, 3, 0), 1e-12);
        assertEquals(3.6982, Drying.waterToBindGrams(90, 100, 3, 0.01), 1e-9);
    }

    @Test
    void agentIsExcessTimesWaterOverUptake() {
        assertEquals(18, Drying.agentGrams(2.7, 0.3, 2), 1e-9);
        assertEquals(0, Drying.agentGrams(0, 0.3, 1), 0);
        assertThrows(IllegalArgumentException.class, () -> Drying.agentGrams(2.7, 0.3, 0.9));
        assertThrows(IllegalArgumentException.class, () -> Drying.agentGrams(2.7, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Drying.agentGrams(-1, 0.3, 1));
    }

    @Test
    void productOnTheCakeIsARange() {
        // By hand: cake 9.15, agent 6.0: 3.15 g gained, of it 0 to 1.15 g water; solution 10 % product, rinsed to 30 %.
        Drying.Range range = Drying.productOnCakeGrams(9.15, 6, 1.15, 0.1, 0.3);
        assertEquals(0.06, range.low(), 1e-9);
        assertEquals(0.0945, range.high(), 1e-9);
    }

    @Test
    void lightCakeHoldsNothing() {
        Drying.Range range = Drying.productOnCakeGrams(5, 6, 1, 0.1, 1);
        assertEquals(0, range.low(), 0);
        assertEquals(0, range.high(), 0);
        assertEquals(0, Drying.productOnCakeGrams(7, 6, 2, 1, 1).low(), 0);
        assertEquals(1, Drying.productOnCakeGrams(7, 6, 2, 1, 1).high(), 1e-12);
        assertEquals(0, Drying.productOnCakeGrams(7, 6, 0, 0, 0).high(), 0);
    }

    @Test
    void solutionOnTheCakeHasAMiddle() {
        // By hand: 3.15 g gained, of it 0 to 1.15 g water.
        Drying.Range held = Drying.solutionOnCakeGrams(9.15, 6, 1.15);
        assertEquals(2.0, held.low(), 1e-9);
        assertEquals(2.575, held.middle(), 1e-9);
    }

    @Test
    void argumentsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Drying.productOnCakeGrams(-1, 0, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> Drying.productOnCakeGrams(1, -1, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> Drying.productOnCakeGrams(1, 1, -1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> Drying.productOnCakeGrams(1, 1, 1, 1.1, 0));
        assertThrows(IllegalArgumentException.class, () -> Drying.productOnCakeGrams(1, 1, 1, -0.1, 0));
        assertThrows(IllegalArgumentException.class, () -> Drying.productOnCakeGrams(1, 1, 1, 0, 1.1));
        assertThrows(IllegalArgumentException.class, () -> Drying.productOnCakeGrams(1, 1, 1, 0, -0.1));
        assertThrows(IllegalArgumentException.class, () -> Drying.waterToBindGrams(-1, 1, 3, 0));
        assertThrows(IllegalArgumentException.class, () -> Drying.waterToBindGrams(1, -1, 3, 0));
        assertThrows(IllegalArgumentException.class, () -> Drying.waterToBindGrams(1, 1, 101, 0));
        assertThrows(IllegalArgumentException.class, () -> Drying.waterToBindGrams(1, 1, -1, 0));
        assertEquals(1, Drying.waterToBindGrams(1, 1, 100, 0), 1e-12);
        assertEquals(0, Drying.waterToBindGrams(1, 1, 0, 0), 0);
        assertThrows(IllegalArgumentException.class, () -> new Drying.Range(2, 1));
    }
}
