package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/** 1.00 g of R (50 g/mol), 20 mmol with a coefficient, and 10.00 g of S, 100 mmol. */
class OneEquivalentTest {
    @Test
    void equivalentIsOneOfTheSubstrateWhereverItStands() {
        assertEquals(100, of(book("substrate", "1")), 1e-9);
    }

    @Test
    void withoutASubstrateTheFirstChargeWithACoefficientCounts() {
        assertEquals(20, of(book("reagent", "1")), 1e-9);
        SmallBook without = book("reagent", "1").first("charges", "Coefficient", "");
        assertEquals(100, of(without), 1e-9);
        assertTrue(OneEquivalent.of(amounts(book("reagent", "").first("charges", "Coefficient", "")))
                .isEmpty());
    }

    @Test
    void substrateOfUnknownAmountIsNotReplaced() {
        SmallBook unknown = book("substrate", "1").but("charges", "Actual amount", "");
        assertTrue(OneEquivalent.of(amounts(unknown)).isEmpty());
    }

    @Test
    void onlyARoleMakesASolvent() {
        assertTrue(amounts(book("solvent", "")).get(1).isSolvent());
        assertFalse(amounts(book("reagent", "")).get(1).isSolvent());
        assertFalse(amounts(book("", "")).get(1).isSolvent());
    }

    private static double of(SmallBook book) {
        return OneEquivalent.of(amounts(book)).orElseThrow().value();
    }

    private static List<ChargeAmount> amounts(SmallBook book) {
        return book.tally().amounts();
    }

    private static SmallBook book(String role, String coefficient) {
        return SmallBook.empty()
                .row("charges", "Material", "R", "Role", "reagent", "Molar mass", "50", "Coefficient", "1")
                .but("charges", "Actual amount", "1.00")
                .but("charges", "Actual unit", "g")
                .row("charges", "Material", "S", "Role", role, "Molar mass", "100", "Coefficient", coefficient)
                .but("charges", "Actual amount", "10.00")
                .but("charges", "Actual unit", "g");
    }
}
