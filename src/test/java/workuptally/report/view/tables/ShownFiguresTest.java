package workuptally.report.view.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ShownFiguresTest {
    /** Two digits of the uncertainty, the value to match: JCGM 100:2008, 7.2.6. */
    @Test
    void valueIsShownToTheSecondDigitOfItsUncertainty() {
        assertEquals(1, ShownFigures.decimals(1.38, 3));
        assertEquals(5, ShownFigures.decimals(0.00079, 1));
        assertEquals(0, ShownFigures.decimals(12.4, 1));
    }

    @Test
    void uncertaintyThatRoundsUpToANewDigitLosesOneDecimal() {
        assertEquals(2, ShownFigures.decimals(0.0996, 1));
        assertEquals(0, ShownFigures.decimals(9.96, 1));
    }

    @Test
    void valueWithoutUncertaintyHasTheDecimalsItIsGiven() {
        assertEquals(2, ShownFigures.decimals(0, 2));
    }

    @Test
    void negativeValueHasATrueMinusAndZeroHasNone() {
        assertEquals("−0.5", ShownFigures.plain(-0.45, 1));
        assertEquals("0.0", ShownFigures.plain(-0.04, 1));
    }
}
