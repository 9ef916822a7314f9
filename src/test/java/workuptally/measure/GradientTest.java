package workuptally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Derivatives of sums over shared readings, by hand. */
class GradientTest {
    @Test
    void readingSharedByBothSidesStandsOnce() {
        // f = 3x·y + x at x = 2, y = 5: ∂f/∂x = 3y + 1 = 16, ∂f/∂y = 3x = 6.
        Gradient x = Gradient.variable(4, 2);
        Gradient y = Gradient.variable(7, 5);
        Gradient f = x.times(3).times(y).plus(x);
        assertEquals(32, f.value(), 1e-12);
        assertEquals(2, f.size());
        assertEquals(4, f.reading(0));
        assertEquals(16, f.derivative(0), 1e-12);
        assertEquals(7, f.reading(1));
        assertEquals(6, f.derivative(1), 1e-12);
    }

    @Test
    void readingsOfBothSidesStandInOrder() {
        Gradient sum = Gradient.variable(9, 1).plus(Gradient.variable(2, 1)).minus(Gradient.variable(5, 1));
        assertEquals(3, sum.size());
        assertEquals(2, sum.reading(0));
        assertEquals(5, sum.reading(1));
        assertEquals(-1, sum.derivative(1), 1e-12);
        assertEquals(9, sum.reading(2));
    }
}
