package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class DistributionTest {
    @Test
    void halfTheAcidIsIonisedAtItsConstant() {
        assertEquals(39, Distribution.acid(78, List.of(4.21), 4.21), 1e-9);
        assertEquals(39, Distribution.base(78, List.of(9.2), 9.2), 1e-9);
    }

    @Test
    void benzoicAcidGoesToTheWaterAtPhSeven() {
        // By hand: 78/(1 + 10^2.79) = 78/617.6 = 0.1263.
        assertEquals(0.1263, Distribution.acid(78, List.of(4.21), 7), 0.0001);
    }

    @Test
    void amineGoesToTheWaterInAcid() {
        // By hand: 10/(1 + 10^(4.6−3)) = 10/40.81 = 0.2450.
        assertEquals(0.2450, Distribution.base(10, List.of(4.6), 3), 0.0001);
    }

    @Test
    void secondProtonCountsToo() {
        // By hand, pKa 4 and 6 at pH 6: 1 + 10^2 + 10^(12−10) = 201.
        assertEquals(1.0, Distribution.acid(201, List.of(4.0, 6.0), 6), 1e-9);
        // Base with pKa 9 and 5 at pH 5: 1 + 10^4 + 10^(14−10) = 20001, P 1e5 held at the floor of 10.
        assertEquals(10.0, Distribution.base(1e5, List.of(9.0, 5.0), 5), 1e-9);
    }

    @Test
    void secondBasicSiteCountsToo() {
        // By hand, pKa 8 and 6 at pH 6: 1 + 10^2 + 10^(14−12) = 201.
        assertEquals(1.0, Distribution.base(201, List.of(8.0, 6.0), 6), 1e-9);
    }

    @Test
    void ionPairsKeepTheRatioAboveAFloor() {
        assertEquals(0.0078, Distribution.acid(78, List.of(4.21), 14), 1e-12);
        assertEquals(0.0078, Distribution.base(78, List.of(9.0), 0), 1e-12);
    }

    @Test
    void neutralDoesNotCareForPh() {
        assertEquals(78, Distribution.neutral(78), 0);
    }

    @Test
    void argumentsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Distribution.neutral(0));
        assertThrows(IllegalArgumentException.class, () -> Distribution.acid(0, List.of(4.0), 4));
        assertThrows(IllegalArgumentException.class, () -> Distribution.acid(1, List.of(), 4));
        assertThrows(IllegalArgumentException.class, () -> Distribution.acid(1, List.of(4.0), Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Distribution.acid(1, List.of(Double.NaN), 4));
    }
}
