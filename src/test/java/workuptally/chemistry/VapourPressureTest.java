package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class VapourPressureTest {
    /** Toluene, Poling, Prausnitz, O'Connell, 5th ed., A moved to kPa. */
    private final Antoine toluene = new Antoine(6.05043, 1327.62, -55.525, 13, 136);

    @Test
    void boilingPointIsTheInverseOfThePressure() {
        assertEquals(101.325, toluene.kilopascals(110.6), 0.5);
        assertEquals(57.3, toluene.boilingPointCelsius(toluene.kilopascals(57.3)), 1e-9);
    }

    @Test
    void rangeIncludesItsEnds() {
        assertTrue(toluene.holdsAt(13));
        assertTrue(toluene.holdsAt(136));
        assertFalse(toluene.holdsAt(12.9));
        assertFalse(toluene.holdsAt(136.1));
    }

    @Test
    void temperatureWherePressureIsUndefinedIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> toluene.kilopascals(-217.7));
        assertThrows(IllegalArgumentException.class, () -> toluene.boilingPointCelsius(0));
        assertThrows(IllegalArgumentException.class, () -> toluene.boilingPointCelsius(1e7));
        assertThrows(IllegalArgumentException.class, () -> new Antoine(6, 0, -50, 0, 100));
        assertThrows(IllegalArgumentException.class, () -> new Antoine(Double.NaN, 1, -50, 0, 100));
        assertThrows(IllegalArgumentException.class, () -> new Antoine(6, 1, Double.NaN, 0, 100));
        assertThrows(IllegalArgumentException.class, () -> new Antoine(6, 1000, -50, 100, 100));
    }

    @Test
    void troutonGuessIsWithinAFactorOfTwoForToluene() {
        // CRC Handbook, toluene 3.79 kPa at 25 °C (memory).
        double guess = Volatility.vapourPressureKilopascals(110.6, 25);
        assertTrue(guess > 3.79 / 2 && guess < 3.79 * 2, () -> "kPa " + guess);
        assertEquals(101.325, Volatility.vapourPressureKilopascals(110.6, 110.6), 1e-9);
    }

    @Test
    void lossFollowsTheRatioOfPressures() {
        // By hand: 2 mol solvent, product at x = 0.05 and 1 % of the solvent's pressure: 2·0.05·0.01 = 0.001 mol.
        assertEquals(0.001, Volatility.amountLostMoles(2, 0.05, 0.3, 30), 1e-12);
        assertEquals(0, Volatility.amountLostMoles(0, 0, 0, 30), 0);
        assertEquals(0.02, Volatility.amountLostMoles(2, 1, 0.3, 30), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> Volatility.amountLostMoles(2, 1.1, 0.3, 30));
        assertThrows(IllegalArgumentException.class, () -> Volatility.amountLostMoles(2, -0.1, 0.3, 30));
        assertThrows(IllegalArgumentException.class, () -> Volatility.amountLostMoles(-1, 0.1, 0.3, 30));
        assertThrows(IllegalArgumentException.class, () -> Volatility.amountLostMoles(1, 0.1, -0.3, 30));
        assertThrows(IllegalArgumentException.class, () -> Volatility.amountLostMoles(1, 0.1, 0.3, 0));
    }
}
