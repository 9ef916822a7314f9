package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CheckTest {
    private static final double EPSILON = 1e-12;

    /** Allowed from -2 to 6, known to 3. */
    private static Check check(double residual) {
        return new Check("sum", residual, -2, 6, 3, 2);
    }

    @Test
    void outsideIsCountedInStandardUncertaintiesAndWithinIsNothing() {
        assertEquals(0, check(-2).off(), 0);
        assertEquals(0, check(6).off(), 0);
        assertEquals(2, check(12).off(), EPSILON);
        assertEquals(-3, check(-11).off(), EPSILON);
    }

    @Test
    void theWindowIsHalfItsWidthWithTheUncertainty() {
        // half of 8 and 3: √(16 + 9) = 5
        assertEquals(5, check(0).width(), EPSILON);
        assertEquals(-2, check(0).fromMiddle(), EPSILON);
        assertEquals(10, check(12).fromMiddle(), EPSILON);
    }

    @Test
    void surpriseIsTheDistanceFromTheMiddleAndTheWidthOfTheWindow() {
        // (1/5)² + 2 ln(5/2)
        assertEquals(0.04 + 2 * Math.log(2.5), check(3).surprise(), EPSILON);
        // farther than its width counts as its width
        assertEquals(1 + 2 * Math.log(2.5), check(100).surprise(), EPSILON);
    }

    @Test
    void aChangeGoesAlongAStraightLine() {
        Check other = new Check("sum", 11, -4, 7, 4, 3);
        Check twice = check(10).along(other, 2);
        assertEquals(new Check("sum", 12, -6, 8, 5, 4), twice);
        assertEquals(check(10), check(10).along(other, 0));
    }

    @Test
    void aLineLeavesHalfOfAnUncertaintyAndAThousandthOfAScale() {
        Check other = new Check("sum", 11, -4, 7, 2, 1);
        Check far = check(10).along(other, 10);
        assertEquals(1.5, far.standardUncertainty(), EPSILON);
        assertEquals(0.002, far.scale(), EPSILON);
    }

    @Test
    void withoutAScaleItIsOne() {
        assertEquals(1, new Check("sum", 0, 0, 1, 1).scale(), 0);
    }
}
