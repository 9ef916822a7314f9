package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ContractionTest {
    /** 50 mL + 50 mL give 96.3 mL: a figure of the trade, found in laboratory texts on partial volumes. */
    @Test
    void ethanolAndWaterShrinkWithinTheAllowance() {
        double change = Contraction.changePercent(100, 96.3);
        assertEquals(-3.7, change, 1e-9);
        assertTrue(Contraction.isPlausible(change));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-12, 0, 5})
    void edgesOfTheAllowancePass(double changePercent) {
        assertTrue(Contraction.isPlausible(changePercent));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-12.1, 5.1})
    void whatLiesOutsideDoesNot(double changePercent) {
        assertFalse(Contraction.isPlausible(changePercent));
    }

    @Test
    void nothingPutInHasNoChange() {
        assertThrows(IllegalArgumentException.class, () -> Contraction.changePercent(0, 10));
    }
}
