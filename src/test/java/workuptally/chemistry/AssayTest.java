package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class AssayTest {
    private static final Assay.Signal ONE = new Assay.Signal(1, 1);

    @Test
    void moleRatioCountsNuclei() {
        assertEquals(0.5, Assay.moleRatio(new Assay.Signal(3, 6), new Assay.Signal(2, 2)), 1e-12);
        assertEquals(2, new Assay.Signal(6, 3).perNucleus(), 1e-12);
    }

    @Test
    void massFractionFromMoleRatiosCountsEveryCompanion() {
        // By hand: 200/(200 + 0.5·88 + 0.1·60) = 0.8.
        assertEquals(
                0.8,
                Assay.massFractionFromMoleRatios(
                        200, List.of(new Assay.Companion(0.5, 88), new Assay.Companion(0.1, 60))),
                1e-12);
        assertEquals(1, Assay.massFractionFromMoleRatios(200, List.of()), 0);
        assertEquals(1, Assay.massFractionFromMoleRatios(200, List.of(new Assay.Companion(0, 88))), 0);
    }

    @Test
    void residueTitrationAndExternalStandard() {
        assertEquals(12.5, Assay.dryResidueMilligramsPerMillilitre(25, 2), 1e-12);
        assertEquals(0, Assay.dryResidueMilligramsPerMillilitre(0, 2), 0);
        assertEquals(2.5, Assay.titratedMillimoles(10, 0.5, 2), 1e-12);
        assertEquals(0, Assay.titratedMillimoles(0, 0.5, 2), 0);
        assertEquals(1, Assay.backTitratedMillimoles(10, 8, 2), 1e-12);
        assertEquals(0, Assay.backTitratedMillimoles(8, 8, 2), 0);
        assertEquals(5, Assay.backTitratedMillimoles(10, 0, 2), 1e-12);
        assertEquals(10, Assay.externalStandardConcentration(50, 100, 2, 10), 1e-12);
        assertEquals(1, Assay.externalStandardConcentration(50, 100, 2, 1), 1e-12);
        assertEquals(0, Assay.externalStandardConcentration(0, 100, 2, 1), 0);
    }

    @Test
    void argumentsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Assay.Signal(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Assay.Signal(1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Assay.Companion(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Assay.Companion(1, 0));
        assertThrows(IllegalArgumentException.class, () -> Assay.massFractionFromMoleRatios(0, List.of()));
        assertThrows(
                IllegalArgumentException.class, () -> Assay.internalStandardPurityPercent(ONE, ONE, 0, 1, 1, 1, 1));
        assertThrows(
                IllegalArgumentException.class, () -> Assay.internalStandardPurityPercent(ONE, ONE, 1, 0, 1, 1, 1));
        assertThrows(
                IllegalArgumentException.class, () -> Assay.internalStandardPurityPercent(ONE, ONE, 1, 1, 0, 1, 1));
        assertThrows(
                IllegalArgumentException.class, () -> Assay.internalStandardPurityPercent(ONE, ONE, 1, 1, 1, 0, 1));
        assertThrows(
                IllegalArgumentException.class, () -> Assay.internalStandardPurityPercent(ONE, ONE, 1, 1, 1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> Assay.dryResidueMilligramsPerMillilitre(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> Assay.dryResidueMilligramsPerMillilitre(1, 0));
        assertThrows(IllegalArgumentException.class, () -> Assay.titratedMillimoles(-1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Assay.titratedMillimoles(1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Assay.titratedMillimoles(1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> Assay.backTitratedMillimoles(1, 2, 1));
        assertThrows(IllegalArgumentException.class, () -> Assay.backTitratedMillimoles(-1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Assay.backTitratedMillimoles(1, -1, 1));
        assertThrows(IllegalArgumentException.class, () -> Assay.backTitratedMillimoles(1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> Assay.externalStandardConcentration(1, 1, 1, 0.9));
        assertThrows(IllegalArgumentException.class, () -> Assay.externalStandardConcentration(-1, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Assay.externalStandardConcentration(1, 0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Assay.externalStandardConcentration(1, 1, 0, 1));
    }
}
