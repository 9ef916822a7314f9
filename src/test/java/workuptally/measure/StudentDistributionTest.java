package workuptally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantiles against SciPy 1.17.1 ({@code stats.norm}, {@code stats.t}, {@code stats.nct}). */
class StudentDistributionTest {
    @ParameterizedTest
    @CsvSource({
        "-2, 0.022750131948179195",
        "-1.645, 0.049984905539121376",
        "3, 0.9986501019683699",
        "-6, 9.865876450376946e-10"
    })
    void normalProbability(double z, double probability) {
        assertEquals(probability, NormalDistribution.probabilityBelow(z), 1e-12 * Math.max(1e-4, probability));
    }

    @Test
    void normalQuantile() {
        assertEquals(1.6448536269514722, NormalDistribution.quantile(0.95), 1e-10);
        assertEquals(-1.6448536269514722, NormalDistribution.quantile(0.05), 1e-10);
        assertThrows(IllegalArgumentException.class, () -> NormalDistribution.quantile(1));
    }

    @ParameterizedTest
    @CsvSource({
        "0.975, 1, 12.706204736174694",
        "0.975, 2, 4.302652729749462",
        "0.975, 5, 2.5705818356363146",
        "0.995, 16, 2.9207816224251",
        "0.95, 3, 2.3533634348018233",
        "0.95, 10, 1.8124611228116756",
        "0.975, 1000, 1.9623390808264083"
    })
    void studentQuantile(double probability, double degreesOfFreedom, double t) {
        assertEquals(t, StudentDistribution.quantile(probability, degreesOfFreedom), 1e-5 * t);
    }

    @Test
    void manyDegreesOfFreedomAreTheNormalDistribution() {
        assertEquals(
                NormalDistribution.quantile(0.95) + 1,
                StudentDistribution.quantile(0.95, Double.POSITIVE_INFINITY, 1),
                1e-12);
    }

    @Test
    void toleranceFactorNeedsTwoValues() {
        assertEquals(2.9109634130781665, ToleranceFactor.oneSided(10, 0.95, 0.95), 1e-6);
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.oneSided(1, 0.95, 0.95));
    }
}
