package workuptally.tally.waste;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/** Shares by mass, worked out in the head; which solvent is halogenated is its formula. */
class SolventContentTest {
    @Test
    void sharesAreByMass() {
        SolventContent content = new SolventContent(
                SmallBook.substances(),
                Map.of("dichloromethane", 30.0, "ethyl acetate", 20.0, "acetic acid", 10.0, "water", 40.0));
        assertEquals(30, content.halogenatedPercent(), 1e-9);
        assertEquals(60, content.organicPercent(), 1e-9);
        assertEquals(10, content.acidPercent(), 1e-9);
        assertEquals(40, content.percent("water"::equals), 1e-9);
    }

    @Test
    void nothingHoldsNothing() {
        SolventContent nothing = new SolventContent(SmallBook.substances(), Map.of());
        assertEquals(0, nothing.halogenatedPercent(), 0);
        assertEquals(0, nothing.organicPercent(), 0);
    }
}
