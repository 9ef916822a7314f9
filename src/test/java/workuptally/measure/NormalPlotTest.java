package workuptally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class NormalPlotTest {
    @Test
    void criticalValuesAreThoseOfTheTable() {
        // Ryan and Joiner's table at 5 %: 0.8804 for 5, 0.9180 for 10, 0.9503 for 20 (from memory)
        assertEquals(0.8804, NormalPlot.critical(5), 5e-4);
        assertEquals(0.9180, NormalPlot.critical(10), 5e-4);
        assertEquals(0.9503, NormalPlot.critical(20), 1.5e-3);
    }

    @Test
    void normalSamplesAreDoubtedInOneOfTwenty() {
        Random random = new Random(7);
        long doubted = Stream.generate(
                        () -> Stream.generate(random::nextGaussian).limit(10).toList())
                .limit(4000)
                .filter(NormalPlot::isDoubtful)
                .count();
        assertEquals(0.05, doubted / 4000.0, 0.015);
    }

    @Test
    void oneValueFarOffIsDoubted() {
        assertTrue(NormalPlot.isDoubtful(List.of(0.2, 0.21, 0.2, 0.22, 3.0)));
        assertFalse(NormalPlot.isDoubtful(List.of(0.20, 0.25, 0.30, 0.35, 0.40)));
        assertTrue(NormalPlot.isDoubtful(List.of(0.1, 0.1, 0.1, 0.1, 0.1)));
        assertThrows(IllegalArgumentException.class, () -> NormalPlot.isDoubtful(List.of(1.0, 2.0, 3.0)));
    }
}
