package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Sums of seven kinds of acid and base, each of another amount so that no two can be taken for each other; hand arithmetic. */
class EquivalentsTest {
    private static final Equivalents EACH = new Equivalents(1, 2, 4, 8, 16, 32, 64);

    @Test
    void kindsAddUpEachForItself() {
        assertEquals(new Equivalents(11, 22, 44, 88, 176, 352, 704), EACH.plus(EACH.times(10)));
    }

    @Test
    void carbonateTakesTwoProtonsAndEveryOtherBaseOne() {
        assertEquals(1 + 2, EACH.acid());
        assertEquals(4 + 2 * 8 + 16 + 32 + 64, EACH.base());
    }

    @Test
    void onlyAcetateAloneIsMild() {
        assertTrue(new Equivalents(0, 0, 0, 0, 0, 0, 5).isMild());
        assertFalse(new Equivalents(0, 0, 0, 0, 0, 1, 5).isMild());
        assertFalse(Equivalents.NONE.isMild());
    }

    @Test
    void eachKindAloneIsTold() {
        for (int kind = 0; kind < 7; kind++) {
            double[] of = new double[7];
            of[kind] = 3;
            Equivalents alone = new Equivalents(of[0], of[1], of[2], of[3], of[4], of[5], of[6]);
            assertFalse(alone.isNone(), alone::toString);
            assertEquals(kind == 3 || kind == 4, alone.givesCarbonDioxide(), alone::toString);
            assertEquals(kind < 3, alone.isOfStrongAcidsAndBases(), alone::toString);
        }
        assertTrue(Equivalents.NONE.isNone());
        assertFalse(EACH.isOfStrongAcidsAndBases());
    }
}
