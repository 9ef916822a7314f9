package workuptally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
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

    @Test
    void readingSharedByBothSidesStandsOnceWithItsJointDerivative() {
        // f = 3x·y + x at x = 2, y = 5: ∂f/∂x = 3y + 1 = 16, ∂f/∂y = 3x = 6.
        MeasuredValue x = reading(2, 0.1);
        MeasuredValue y = reading(5, 0.1);
        MeasuredValue f = x.times(3).times(y).plus(x);
        assertEquals(32, f.value(), 1e-12);
        assertEquals(2, f.budget().size());
        assertEquals(16, sensitivity(f, 2), 1e-12);
        assertEquals(6, sensitivity(f, 5), 1e-12);
    }

    @Test
    void wellKnownUncertaintyKeepsTheFactorOfTheBook() {
        MeasuredValue sum = reading(10, 3).plus(reading(20, 4));
        assertEquals(Double.POSITIVE_INFINITY, sum.effectiveDegreesOfFreedom(), 0);
        assertEquals(2, sum.coverageFactor(2), 0);
        assertEquals(30 + 1.645 * 5, sum.oneSidedUpperBound(), 1e-12);
    }

    @Test
    void threeRepeatsWidenTheFactor() {
        // 95.45 % of Student's distribution with 2 degrees of freedom: 4.527 (JCGM 100:2008, table G.2: 4.53)
        MeasuredValue mean = readings.enter("mean of three", "g", 10, 0.1, 2, () -> "-");
        assertEquals(4.53, mean.coverageFactor(2), 0.005);
        assertEquals(0.453, mean.expandedUncertainty(2), 0.0005);
    }

    @Test
    void partWithFewRepeatsCountsByItsShare() {
        // u = 5, ν = 5⁴ / (3⁴/2) = 15.43
        MeasuredValue sum = readings.enter("mean", "g", 10, 3, 2, () -> "-").plus(reading(20, 4));
        assertEquals(15.432, sum.effectiveDegreesOfFreedom(), 0.001);
    }

    @Test
    void readingsOfBothSidesAreAllCounted() {
        MeasuredValue a = reading(1, 0.1);
        MeasuredValue b = reading(2, 0.1);
        MeasuredValue c = reading(3, 0.1);
        MeasuredValue sum = c.plus(a).minus(b);
        assertEquals(1, sensitivity(sum, 1), 1e-12);
        assertEquals(-1, sensitivity(sum, 2), 1e-12);
        assertEquals(1, sensitivity(sum, 3), 1e-12);
        assertEquals(
                List.of(1.0, 2.0, 3.0),
                sum.budget().stream().map(part -> part.reading().value()).toList());
    }

    private static double sensitivity(MeasuredValue value, double reading) {
        return value.budget().stream()
                .filter(part -> part.reading().value() == reading)
                .mapToDouble(Contribution::sensitivity)
                .sum();
    }

    private MeasuredValue reading(double value, double u) {
        return readings.enter("reading", "g", value, u, () -> "test");
    }
}
