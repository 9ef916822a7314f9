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
    void tolueneBoilsAtOneAtmosphereWhereTheHandbookSaysSo() {
        assertEquals(101.325, toluene.kilopascals(110.6), 0.5);
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
        assertThrows(IllegalArgumentException.class, () -> new Antoine(6, 0, -50, 0, 100));
        assertThrows(IllegalArgumentException.class, () -> new Antoine(Double.NaN, 1, -50, 0, 100));
        assertThrows(IllegalArgumentException.class, () -> new Antoine(6, 1, Double.NaN, 0, 100));
        assertThrows(IllegalArgumentException.class, () -> new Antoine(6, 1000, -50, 100, 100));
    }
}
