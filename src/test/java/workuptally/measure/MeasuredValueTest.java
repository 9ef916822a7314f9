package workuptally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class MeasuredValueTest {
    private final Readings readings = new Readings();

    @Test
    void uncertaintyOfASumOfIndependentTermsIsTheRootOfTheSumOfSquares() {
        MeasuredValue sum = reading(10, 3).plus(reading(20, 4));
        assertEquals(30, sum.value(), 1e-12);
        assertEquals(5, sum.standardUncertainty(), 1e-12);
    }

    @Test
    void sharedReadingCancelsInADifference() {
        MeasuredValue tare = reading(80, 0.02);
        MeasuredValue net = reading(100, 0).minus(tare).plus(tare);
        assertEquals(0, net.standardUncertainty(), 1e-12);
    }

    @Test
    void quotientAddsRelativeSquares() {
        MeasuredValue ratio = reading(2.94, 0.02).over(reading(3.20, 0.01)).times(100);
        assertEquals(91.875, ratio.value(), 1e-9);
        assertEquals(91.875 * Math.hypot(0.02 / 2.94, 0.01 / 3.20), ratio.standardUncertainty(), 1e-9);
    }

    @Test
    void budgetNamesTheLargestShareFirst() {
        MeasuredValue product = reading(2, 0.1).times(reading(5, 0.01));
        assertEquals(2, product.budget().get(0).reading().value(), 0);
        assertEquals(
                100,
                product.budget().stream()
                        .mapToDouble(Contribution::variancePercent)
                        .sum(),
                1e-9);
    }

    private MeasuredValue reading(double value, double u) {
        return readings.enter("reading", "g", value, u, () -> "test");
    }
}
