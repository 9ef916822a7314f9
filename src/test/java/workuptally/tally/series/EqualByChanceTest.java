package workuptally.tally.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class EqualByChanceTest {
    private static List<Double> masses(Random random, int count, double lastDigit) {
        return Stream.generate(() -> Math.rint((6 + 0.2 * random.nextGaussian()) / lastDigit) * lastDigit)
                .limit(count)
                .toList();
    }

    /** Against counting: 400 classes of 60 that nobody copied in. */
    @Test
    void expectsAsManyPairsAsAreCounted() {
        Random random = new Random(5);
        double expected = 0;
        double counted = 0;
        for (int i = 0; i < 400; i++) {
            List<Double> masses = masses(random, 60, 0.001);
            expected += new EqualByChance(masses).expectedPairs() / 400;
            Map<Long, Integer> seen = new HashMap<>();
            for (double mass : masses) {
                counted += (seen.merge(Math.round(1000 * mass), 1, Integer::sum) - 1) / 400.0;
            }
        }
        assertEquals(counted, expected, 0.1 * counted);
        assertTrue(expected > 2, "two or three pairs");
    }

    @Test
    void anEqualPairAmongFewFineWeighingsIsASign() {
        assertFalse(new EqualByChance(masses(new Random(1), 6, 0.0001)).isLikely());
        assertFalse(new EqualByChance(List.of(6.001, 6.001)).isLikely());
        assertTrue(new EqualByChance(masses(new Random(1), 24, 0.01)).isLikely());
    }

    /** s is 0.1 g; three pairs × d/(2·√π × 0.1 g) with d of one decimal 0.84628, of three 0.0084628; finer than 10 µg no balance is. */
    @Test
    void pairsFollowFromScatterAndLastDigit() {
        assertEquals(0.84628, new EqualByChance(List.of(1.0, 1.1, 1.2)).expectedPairs(), 1e-5);
        assertEquals(0.84628, new EqualByChance(List.of(-0.1, 0.0, 0.1)).expectedPairs(), 1e-5);
        assertEquals(0.0084628, new EqualByChance(List.of(1.001, 1.101, 1.201)).expectedPairs(), 1e-7);
        assertEquals(8.4628e-5, new EqualByChance(List.of(1.00001, 1.10001, 1.20001)).expectedPairs(), 1e-9);
        // three grams apart with s = 3 g: d = 1 g
        assertEquals(3 / (2 * Math.sqrt(Math.PI) * 3), new EqualByChance(List.of(3.0, 6.0, 9.0)).expectedPairs(), 1e-9);
        assertEquals(0, new EqualByChance(List.of(1.0, 2.0)).expectedPairs());
        assertEquals(0, new EqualByChance(List.of(1.0, 1.0, 1.0)).expectedPairs());
    }
}
