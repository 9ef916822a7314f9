package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class MixtureTest {
    @Test
    void volumesAddInAnIdealMixture() {
        // By hand: 100 g at 1.25 and 80 g at 0.80 g/mL fill 80 + 100 mL.
        List<Mixture.Part> parts = List.of(new Mixture.Part(100, 1.25), new Mixture.Part(80, 0.8));
        assertEquals(180, Mixture.volumeMillilitres(parts), 1e-12);
        assertEquals(0, Mixture.volumeMillilitres(List.of()), 0);
    }

    @Test
    void partsHaveMassAndDensity() {
        assertThrows(IllegalArgumentException.class, () -> new Mixture.Part(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Mixture.Part(1, 0));
    }

    @Test
    void densityFallsWithTemperature() {
        // CRC Handbook: water 0.9982 at 20 °C, 0.9970 at 25 °C.
        assertEquals(0.9970, Mixture.atTemperature(0.9982, -0.00023, 25), 0.0001);
        assertEquals(0.9982, Mixture.atTemperature(0.9982, -0.00023, 20), 0);
        // By hand: 1.3266/(1 + 0.0012·10) = 1.3109.
        assertEquals(1.3109, Mixture.expanded(1.3266, 0.0012, 30), 0.0001);
        assertEquals(1.3427, Mixture.expanded(1.3266, 0.0012, 10), 0.0001);
        assertThrows(IllegalArgumentException.class, () -> Mixture.atTemperature(1, -0.1, 30));
        assertThrows(IllegalArgumentException.class, () -> Mixture.atTemperature(-1, 1, 30));
        assertThrows(IllegalArgumentException.class, () -> Mixture.expanded(0, 0.001, 30));
        assertThrows(IllegalArgumentException.class, () -> Mixture.expanded(1, -0.1, 30));
    }
}
