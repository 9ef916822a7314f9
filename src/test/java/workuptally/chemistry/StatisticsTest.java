package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.chemistry.IndividualsChart.Rule;
import workuptally.chemistry.IndividualsChart.Signal;

class StatisticsTest {
    @Test
    void medianTakesTheMiddle() {
        assertEquals(3, Statistics.median(List.of(9.0, 1.0, 3.0)), 0);
        assertEquals(2.5, Statistics.median(List.of(4.0, 1.0, 3.0, 2.0)), 0);
        assertEquals(7, Statistics.median(List.of(7.0)), 0);
    }

    @Test
    void robustSpreadIgnoresOneWildValue() {
        // By hand: 1 2 3 4 100: median 3, deviations 2 1 0 1 97, their median 1.
        List<Double> values = List.of(1.0, 2.0, 3.0, 4.0, 100.0);
        assertEquals(1, Statistics.medianAbsoluteDeviation(values), 0);
        assertEquals(1.4826, Statistics.robustSpread(values), 1e-12);
        assertEquals(List.of(4), Statistics.outliers(values));
    }

    @Test
    void robustSpreadScalesTheDeviation() {
        // By hand: 2 4 6 8 200: median 6, deviations 4 2 0 2 194, their median 2; 2·1.4826.
        assertEquals(2.9652, Statistics.robustSpread(List.of(2.0, 4.0, 6.0, 8.0, 200.0)), 1e-12);
    }

    @Test
    void standardDeviationDividesByOneLess() {
        // By hand: 2 4 4 4 5 5 7 9, mean 5, squares 32, 32/7 = 4.5714.
        List<Double> values = List.of(2.0, 4.0, 4.0, 4.0, 5.0, 5.0, 7.0, 9.0);
        assertEquals(Math.sqrt(32.0 / 7), Statistics.standardDeviation(values), 1e-12);
        assertEquals(5, Statistics.mean(values), 1e-12);
    }

    @Test
    void outlierLimitIsThreeAndAHalfSpreads() {
        // Limit 3 + 3.5·1.4826 = 8.189.
        assertEquals(List.of(), Statistics.outliers(List.of(1.0, 2.0, 3.0, 4.0, 8.18)));
        assertEquals(List.of(4), Statistics.outliers(List.of(1.0, 2.0, 3.0, 4.0, 8.20)));
        assertEquals(List.of(0), Statistics.outliers(List.of(-50.0, 2.0, 3.0, 4.0, 5.0)));
    }

    @Test
    void equalValuesHaveNoOutliers() {
        assertEquals(List.of(), Statistics.outliers(List.of(2.0, 2.0, 2.0, 2.0, 5.0)));
    }

    @Test
    void tooFewOrUnusableValuesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Statistics.mean(List.of()));
        assertThrows(IllegalArgumentException.class, () -> Statistics.median(List.of()));
        assertThrows(IllegalArgumentException.class, () -> Statistics.median(List.of(Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> Statistics.standardDeviation(List.of(1.0)));
        assertThrows(IllegalArgumentException.class, () -> IndividualsChart.of(List.of(1.0)));
        assertThrows(IllegalArgumentException.class, () -> new IndividualsChart(0, 1).signals(List.of(Double.NaN)));
    }

    @Test
    void pointOutsideTheLimitsSignals() {
        // Limits 50 ± 2.6596.
        IndividualsChart chart = new IndividualsChart(50, 1);
        assertEquals(List.of(new Signal(0, Rule.OUTSIDE_LIMITS)), chart.signals(List.of(52.66)));
        assertEquals(List.of(new Signal(0, Rule.OUTSIDE_LIMITS)), chart.signals(List.of(47.34)));
        assertEquals(List.of(), chart.signals(List.of(52.65)));
        assertEquals(List.of(), chart.signals(List.of(47.35)));
    }

    @Test
    void jumpAboveTheRangeLimitSignals() {
        IndividualsChart chart = new IndividualsChart(50, 1);
        assertEquals(List.of(new Signal(1, Rule.MOVING_RANGE)), chart.signals(List.of(48.0, 51.3)));
        assertEquals(List.of(new Signal(1, Rule.MOVING_RANGE)), chart.signals(List.of(51.3, 48.0)));
        assertEquals(List.of(), chart.signals(List.of(48.0, 51.2)));
    }

    @Test
    void nineOnOneSideSignal() {
        IndividualsChart chart = new IndividualsChart(50, 1);
        List<Double> eight = List.of(51.0, 50.5, 51.0, 50.5, 51.0, 50.5, 51.0, 50.5);
        assertEquals(List.of(), chart.signals(eight));
        List<Double> nine = List.of(49.5, 51.0, 50.5, 51.0, 50.5, 51.0, 50.5, 51.0, 50.5, 51.0);
        assertEquals(List.of(new Signal(9, Rule.NINE_ON_ONE_SIDE)), chart.signals(nine));
        List<Double> broken = List.of(51.0, 50.5, 51.0, 50.5, 50.0, 50.5, 51.0, 50.5, 51.0, 50.5);
        assertEquals(List.of(), chart.signals(broken));
        List<Double> below = List.of(49.0, 49.5, 49.0, 49.5, 49.0, 49.5, 49.0, 49.5, 49.0);
        assertEquals(List.of(new Signal(8, Rule.NINE_ON_ONE_SIDE)), chart.signals(below));
    }

    @Test
    void sixRisingOrFallingSignal() {
        IndividualsChart chart = new IndividualsChart(50, 1);
        assertEquals(
                List.of(new Signal(5, Rule.SIX_RISING_OR_FALLING)),
                chart.signals(List.of(49.0, 49.4, 49.8, 50.2, 50.6, 51.0)));
        assertEquals(
                List.of(new Signal(5, Rule.SIX_RISING_OR_FALLING)),
                chart.signals(List.of(51.0, 50.6, 50.2, 49.8, 49.4, 49.0)));
        assertEquals(List.of(), chart.signals(List.of(49.0, 49.4, 49.8, 49.8, 50.2, 50.6, 51.0)));
        assertEquals(List.of(), chart.signals(List.of(49.0, 49.4, 49.8, 50.2, 50.6)));
    }

    @Test
    void meanKeepsDigitsOfLargeNumbers() {
        assertEquals(1e15 + 1.0 / 3, Statistics.mean(List.of(1e15, 1e15, 1e15 + 1)), 0.13);
    }
}
