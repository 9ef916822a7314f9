package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class ExtractionTest {
    @Test
    void gainIsWhatThePortionsTake() {
        // By hand: 3.3 g, D = 4, 20 mL to 40 mL, one portion: two thirds.
        assertEquals(2.2, Extraction.gainGrams(3.3, 4, 20, 40, 1), 1e-9);
        assertEquals(3.3 * 8 / 9, Extraction.gainGrams(3.3, 4, 20, 40, 2), 1e-9);
        assertEquals(0, Extraction.gainGrams(0, 4, 20, 40, 1), 0);
        assertEquals(0, Extraction.gainGrams(3.3, 0, 20, 40, 1), 0);
    }

    @Test
    void bestSplitStopsWhereAnotherPortionGainsLittle() {
        // By hand, D·V/Va = 3: left 0.25, 0.16, 0.125, 0.1066; gains 0.09, 0.035, 0.0184.
        assertEquals(2, Extraction.bestSplit(3, 100, 100, 0.04));
        assertEquals(3, Extraction.bestSplit(3, 100, 100, 0.02));
        assertEquals(1, Extraction.bestSplit(3, 100, 100, 0.1));
        assertEquals(100, Extraction.bestSplit(3, 100, 100, 1e-9));
        assertEquals(1, Extraction.bestSplit(0, 100, 100, 0.01));
    }

    @Test
    void argumentsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Extraction.fractionLeft(-1, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Extraction.fractionLeft(1, -1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Extraction.fractionLeft(1, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Extraction.fractionLeft(1, 1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> Extraction.bestSplit(1, 1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> Extraction.gainGrams(-1, 1, 1, 1, 1));
    }
}
