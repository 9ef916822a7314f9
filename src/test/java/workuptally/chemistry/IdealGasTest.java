package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class IdealGasTest {
    @Test
    void oneMoleFillsTheMolarVolume() {
        // Textbook: 24.06 L at 20 °C, 22.414 L at 0 °C, 101.325 kPa.
        assertEquals(24.055, IdealGas.volumeLitres(1, 20, 101.325), 0.001);
        assertEquals(22.414, IdealGas.volumeLitres(1, 0, 101.325), 0.001);
    }

    @Test
    void argumentsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> IdealGas.volumeLitres(-1, 20, 101));
        assertThrows(IllegalArgumentException.class, () -> IdealGas.volumeLitres(1, -273.15, 101));
        assertThrows(IllegalArgumentException.class, () -> IdealGas.volumeLitres(1, 20, 0));
        assertEquals(0, IdealGas.volumeLitres(0, 20, 101), 0);
    }
}
