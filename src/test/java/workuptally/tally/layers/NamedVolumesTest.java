package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/** Densities at 20 °C of the CRC Handbook: toluene 0.8668, water 0.9982, 10 % sodium chloride in water 1.0707 g/mL. */
class NamedVolumesTest {
    private static double millilitres(Map<String, Double> grams) {
        return new NamedVolumes(SmallBook.substances()).millilitres(grams);
    }

    @Test
    void liquidsAddUpByTheirDensity() {
        assertEquals(86.68 / 0.8668 + 50 / 0.9982, millilitres(Map.of("toluene", 86.68, "water", 50.0)), 0.01);
    }

    @Test
    void aSaltAddsWhatItsSolutionHasMoreThanTheWater() {
        // 10 g in 90 g of water: 100/1.0707 = 93.40 mL
        assertEquals(93.40, millilitres(Map.of("sodium chloride", 10.0, "water", 90.0)), 0.01);
        // without water, none
        assertEquals(0, millilitres(Map.of("sodium chloride", 10.0)), 0);
    }

    @Test
    void aSaltWithoutATableAddsNothingAndAnythingElseAMillilitreForAGram() {
        assertEquals(90 / 0.9982, millilitres(Map.of("caesium carbonate", 10.0, "water", 90.0)), 0.01);
        assertEquals(0, millilitres(Map.of(LayerMakeUpAccount.SALTS, 10.0)), 0);
        assertEquals(12, millilitres(Map.of("benzocaine", 12.0)), 1e-9);
    }
}
