package workuptally.report.view.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FiguresTest {
    /** Two digits of the uncertainty, the value to match: JCGM 100:2008, 7.2.6. */
    @Test
    void valueIsShownToTheSecondDigitOfItsUncertainty() {
        assertEquals("66.9 ± 1.4", Figures.plusMinus(66.914, 1.38, 1));
        assertEquals("100.02147 ± 0.00079", Figures.plusMinus(100.021472, 0.00079, 1));
        assertEquals("104 ± 12", Figures.plusMinus(103.6, 12.4, 1));
    }

    @Test
    void uncertaintyThatRoundsUpToANewDigitLosesOneDecimal() {
        assertEquals("1.00 ± 0.10", Figures.plusMinus(1.0004, 0.0996, 1));
        assertEquals("50 ± 10", Figures.plusMinus(50.04, 9.96, 1));
    }

    @Test
    void largeUncertaintyRoundsToTens() {
        assertEquals("1230 ± 160", Figures.plusMinus(1234.4, 156.6, 1));
    }

    @Test
    void valueWithoutUncertaintyHasTheDecimalsItIsGiven() {
        assertEquals("12.35", Figures.plusMinus(12.3456, 0, 2));
    }

    @Test
    void negativeValueHasATrueMinusAndZeroHasNone() {
        assertEquals("−0.5", Figures.plain(-0.45, 1));
        assertEquals("0.0", Figures.plain(-0.04, 1));
    }
}
