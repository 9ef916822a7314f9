package workuptally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.analysis.differentiation.SparseGradient;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties over printed seeds: automatic derivatives against finite differences, and the uncertainty of sums. */
class DerivativesTest {
    private static MeasuredValue expression(Readings readings, double[] x, double[] u) {
        MeasuredValue a = readings.enter("a", "g", x[0], u[0], () -> "-");
        MeasuredValue b = readings.enter("b", "g", x[1], u[1], () -> "-");
        MeasuredValue c = readings.enter("c", "g", x[2], u[2], () -> "-");
        return a.times(b).minus(c).over(b.plus(a.times(2))).plus(c.times(c).over(7));
    }

    private static double[] values(Random random) {
        return new double[] {1 + 9 * random.nextDouble(), 1 + 9 * random.nextDouble(), 1 + 9 * random.nextDouble()};
    }

    @ParameterizedTest
    @ValueSource(longs = {101, 102, 103, 104, 105, 106, 107, 108, 109, 110})
    void sensitivitiesAgreeWithFiniteDifferences(long seed) {
        Random random = new Random(seed);
        double[] x = values(random);
        double[] u = {0.1, 0.2, 0.3};
        MeasuredValue result = expression(new Readings(), x, u);
        for (Contribution part : result.budget()) {
            int i = "abc".indexOf(part.reading().name());
            double step = 1e-5;
            double[] high = x.clone();
            double[] low = x.clone();
            high[i] += step;
            low[i] -= step;
            double slope = (expression(new Readings(), high, u).value()
                            - expression(new Readings(), low, u).value())
                    / (2 * step);
            assertEquals(slope, part.sensitivity(), 1e-6 * (1 + Math.abs(slope)), "seed " + seed);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {201, 202, 203, 204, 205})
    void sumOfIndependentReadingsAddsSquares(long seed) {
        Random random = new Random(seed);
        Readings readings = new Readings();
        MeasuredValue sum = readings.exact(0);
        double squares = 0;
        for (int i = 0; i < 20; i++) {
            double u = random.nextDouble();
            sum = sum.plus(readings.enter("x" + i, "g", 10 * random.nextDouble(), u, () -> "-"));
            squares += u * u;
        }
        assertEquals(Math.sqrt(squares), sum.standardUncertainty(), 1e-12, "seed " + seed);
        List<Contribution> budget = sum.budget();
        assertEquals(
                100, budget.stream().mapToDouble(Contribution::variancePercent).sum(), 1e-9, "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {301, 302, 303})
    void scalingAllReadingsLeavesARatioAndItsRelativeUncertainty(long seed) {
        Random random = new Random(seed);
        double[] x = values(random);
        double factor = 1 + 100 * random.nextDouble();
        MeasuredValue one = ratio(x, 1);
        MeasuredValue scaled = ratio(x, factor);
        assertEquals(one.value(), scaled.value(), 1e-12 * one.value(), "seed " + seed);
        assertEquals(one.standardUncertainty(), scaled.standardUncertainty(), 1e-12 * one.value(), "seed " + seed);
    }

    @Test
    void expandedAndRelativeUncertaintyFollowFromTheStandardOne() {
        Readings readings = new Readings();
        MeasuredValue mass = readings.enter("a", "g", -4, 0.1, () -> "-");
        assertEquals(0.2, mass.expandedUncertainty(2), 1e-12);
        assertEquals(0.025, mass.relativeStandardUncertainty(), 1e-12);
        assertEquals(0, readings.exact(0).relativeStandardUncertainty(), 0);
        assertEquals("-4.0 (u 0.1)", mass.toString());
    }

    @Test
    void budgetBeginsWithTheLargestShare() {
        Readings readings = new Readings();
        MeasuredValue sum =
                readings.enter("small", "g", 1, 0.1, () -> "-").plus(readings.enter("large", "g", 1, 0.3, () -> "-"));
        assertEquals("large", sum.budget().get(0).reading().name());
        assertEquals(90, sum.budget().get(0).variancePercent(), 1e-9);
        assertEquals(10, sum.budget().get(1).variancePercent(), 1e-9);
    }

    private static MeasuredValue ratio(double[] x, double factor) {
        Readings readings = new Readings();
        return readings.enter("a", "g", factor * x[0], factor * 0.01, () -> "-")
                .over(readings.enter("b", "g", factor * x[1], factor * 0.02, () -> "-"));
    }

    /** The same sums, products and quotients by the sparse gradients of Hipparchus, a published library of automatic differentiation. */
    @ParameterizedTest
    @ValueSource(longs = {301, 302, 303, 304, 305})
    void sensitivitiesAreThoseOfAPublishedLibrary(long seed) {
        Random random = new Random(seed);
        Readings readings = new Readings();
        List<MeasuredValue> own = new ArrayList<>();
        List<SparseGradient> library = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double x = 1 + random.nextDouble();
            own.add(readings.enter(Integer.toString(i), "g", x, 0.1, () -> "-"));
            library.add(SparseGradient.createVariable(i, x));
        }
        for (int step = 0; step < 60; step++) {
            int a = random.nextInt(own.size());
            int b = random.nextInt(own.size());
            switch (step % 6) {
                case 0 ->
                    add(
                            own,
                            own.get(a).plus(own.get(b)),
                            library,
                            library.get(a).add(library.get(b)));
                case 1 ->
                    add(
                            own,
                            own.get(a).minus(own.get(b)),
                            library,
                            library.get(a).subtract(library.get(b)));
                case 2 ->
                    add(
                            own,
                            own.get(a).times(own.get(b)),
                            library,
                            library.get(a).multiply(library.get(b)));
                case 3 ->
                    add(
                            own,
                            own.get(a).over(own.get(b % 12)),
                            library,
                            library.get(a).divide(library.get(b % 12)));
                case 4 ->
                    add(own, own.get(a).times(0.3), library, library.get(a).multiply(0.3));
                default ->
                    add(own, own.get(a).over(1.7), library, library.get(a).divide(1.7));
            }
        }
        for (int i = 0; i < own.size(); i++) {
            SparseGradient expected = library.get(i);
            assertEquals(expected.getValue(), own.get(i).value(), 1e-12 * (1 + Math.abs(expected.getValue())));
            for (Contribution part : own.get(i).budget()) {
                double slope =
                        expected.getDerivative(Integer.parseInt(part.reading().name()));
                assertEquals(slope, part.sensitivity(), 1e-9 * (1 + Math.abs(slope)), "seed " + seed);
            }
        }
    }

    private static void add(
            List<MeasuredValue> own, MeasuredValue value, List<SparseGradient> library, SparseGradient expected) {
        own.add(value);
        library.add(expected);
    }
}
