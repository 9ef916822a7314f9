package workuptally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class StandardUncertaintyTest {
    @Test
    void rulesAgreeWithTheGuideToUncertainty() {
        // JCGM 100:2008, 4.3.7 and F.2.2.1: a/1.732, 0.29 d.
        assertEquals(0.0577, StandardUncertainty.rectangular(0.1), 0.0001);
        assertEquals(0.029, StandardUncertainty.ofStep(0.1), 0.0002);
    }

    @Test
    void negativePartsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> StandardUncertainty.rectangular(-1));
        assertThrows(IllegalArgumentException.class, () -> StandardUncertainty.rectangular(Double.POSITIVE_INFINITY));
    }
}
