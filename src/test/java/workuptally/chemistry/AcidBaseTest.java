package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AcidBaseTest {
    @Test
    void capacityIsWashOverAcid() {
        assertEquals(2.2, AcidBase.capacityRatio(55, 25), 1e-12);
        assertEquals(0, AcidBase.capacityRatio(0, 25), 0);
        assertThrows(IllegalArgumentException.class, () -> AcidBase.capacityRatio(55, 0));
        assertThrows(IllegalArgumentException.class, () -> AcidBase.capacityRatio(-1, 1));
    }

    @Test
    void saltLeftIsBaseLessAcid() {
        assertEquals(25.8, AcidBase.residualSaltMillimoles(150, 124.2), 1e-9);
        assertEquals(0, AcidBase.residualSaltMillimoles(100, 120), 0);
        assertEquals(0, AcidBase.residualSaltMillimoles(0, 0), 0);
        assertThrows(IllegalArgumentException.class, () -> AcidBase.residualSaltMillimoles(-1, 0));
        assertThrows(IllegalArgumentException.class, () -> AcidBase.residualSaltMillimoles(0, -1));
    }

    @Test
    void chargeBalanceNeedsLittleFreeAcidAndBase() {
        assertTrue(AcidBase.chargeBalanceHolds(25, 5.6, 100));
        // pH 1 in 100 mL is 10 mmol of free acid, pH 13 as much base: more than a tenth of 25.
        assertFalse(AcidBase.chargeBalanceHolds(25, 1, 100));
        assertFalse(AcidBase.chargeBalanceHolds(25, 13, 100));
        assertFalse(AcidBase.chargeBalanceHolds(0, 7, 100));
        assertTrue(AcidBase.chargeBalanceHolds(101, 1, 100));
        assertThrows(IllegalArgumentException.class, () -> AcidBase.chargeBalanceHolds(-1, 7, 100));
        assertThrows(IllegalArgumentException.class, () -> AcidBase.chargeBalanceHolds(1, 7, 0));
    }

    @Test
    void freeIonsFollowFromPh() {
        assertEquals(1e-3, AcidBase.hydrogenIonMolesPerLitre(3), 1e-15);
        assertEquals(1e-3, AcidBase.hydroxideIonMolesPerLitre(11), 1e-15);
        assertThrows(IllegalArgumentException.class, () -> AcidBase.hydrogenIonMolesPerLitre(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> AcidBase.hydroxideIonMolesPerLitre(Double.NaN));
    }

    @Test
    void acidIsHalfIonisedAtItsConstant() {
        assertEquals(0.5, AcidBase.ionisedAcidFraction(4.21, 4.21), 1e-12);
        // By hand: 1/(1 + 10^(4.21−5.6)) = 0.9609.
        assertEquals(0.9609, AcidBase.ionisedAcidFraction(4.21, 5.6), 0.0001);
    }

    @Test
    void protonsBoundGoFromAllToNoneByOneAtTheMiddle() {
        List<Double> carbonic = List.of(6.35, 10.33);
        // By symmetry one proton midway between the constants, 1.5 and 0.5 at them up to 10^(−3.98).
        assertEquals(1, AcidBase.protonsBound(carbonic, 8.34), 1e-12);
        assertEquals(1.5, AcidBase.protonsBound(carbonic, 6.35), 1e-4);
        assertEquals(0.5, AcidBase.protonsBound(carbonic, 10.33), 1e-4);
        assertEquals(2, AcidBase.protonsBound(carbonic, 0), 1e-6);
        assertEquals(0, AcidBase.protonsBound(carbonic, 17), 1e-6);
        // One constant: Henderson and Hasselbalch.
        assertEquals(1 - AcidBase.ionisedAcidFraction(4.2, 5), AcidBase.protonsBound(List.of(4.2), 5), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> AcidBase.protonsBound(List.of(), 7));
        assertThrows(IllegalArgumentException.class, () -> AcidBase.protonsBound(carbonic, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> AcidBase.protonsBound(List.of(Double.NaN), 7));
    }

    @ParameterizedTest
    @CsvSource({
        // Stoichiometry, common practice: the first proton on carbonate gives no gas.
        "10, 0, 50, 10, 10",
        "60, 0, 50, 50, 50",
        "10, 20, 0, 0, 5",
        "30, 20, 0, 10, 15",
        "40, 20, 0, 20, 20",
        "90, 20, 0, 20, 20",
        "30, 20, 10, 10, 20",
        "0, 20, 10, 0, 0"
    })
    void carbonDioxideCountsProtons(
            double acid, double carbonate, double hydrogencarbonate, double mixed, double worst) {
        assertEquals(mixed, AcidBase.carbonDioxideMillimoles(acid, carbonate, hydrogencarbonate), 1e-12);
    }

    @Test
    void negativeAmountsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> AcidBase.carbonDioxideMillimoles(-1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> AcidBase.carbonDioxideMillimoles(1, -1, 1));
        assertThrows(IllegalArgumentException.class, () -> AcidBase.carbonDioxideMillimoles(1, 1, -1));
    }
}
