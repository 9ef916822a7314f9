package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.amounts.Ingredients;

/** Estimates of how solvents that mix with water divide; 16 mL of an organic solvent, 15 mL of the solvent, 20 mL water. */
class PhaseSplitTest {
    @Test
    void tetrahydrofuranGoesByItsOctanolRatioWhereNothingNearerIsListed() {
        // log P 0.46 (CRC Handbook): D = 2.884. x = 15 s mL of it in the water: x/15 = (20 + x)/(20 + x + 2.884 (16 +
        // 15 - x)), x = 3.41.
        assertEquals(3.41 / 15, shareInWater("ethyl acetate", "tetrahydrofuran"), 0.001);
    }

    @Test
    void methanolStaysWithTheWaterForTheMostPart() {
        // D = 0.3 (common practice): x/15 = (20 + x)/(20 + x + 0.3 (31 - x)), x = 12.87.
        assertEquals(12.87 / 15, shareInWater("ethyl acetate", "methanol"), 0.001);
    }

    /** 100 mL petroleum ether shaken with 80 mL methanol and water 4 to 1: the lower phase is the methanol (common practice of washing hydrocarbons). */
    @Test
    void aHydrocarbonTakesUpNextToNoneOfMethanol() {
        PhaseSplit split = split("petroleum ether", 100, "methanol", 64, 16);
        assertTrue(split.organic().grams("methanol") < 0.01 * 64 * 0.79);
        assertTrue(split.aqueous().grams("petroleum ether") < 1);
    }

    /**
     * Upper bounds of what hexane and water leave in the hexane. Source: distribution between alkanes and water, methanol 0.002, dimethyl
     * sulfoxide below 0.001, acetonitrile 0.06, acetone 0.1 (from memory, Abraham and others 1994 compute the same within a factor of 2).
     */
    @ParameterizedTest
    @CsvSource({
        "hexane, methanol, 0.01", "heptane, ethanol, 0.02", "cyclohexane, dimethyl sulfoxide, 0.01",
                "pentane, acetonitrile, 0.12",
        "petroleum ether, acetone, 0.16", "hexane, 'N,N-dimethylformamide', 0.01", "toluene, methanol, 0.02",
                "toluene, dimethyl sulfoxide, 0.02"
    })
    void hydrocarbonsLeaveMiscibleSolventsToTheWater(String organic, String solvent, double most) {
        double left = 1 - shareInWater(organic, solvent);
        assertTrue(left > 0 && left < most, organic + " keeps " + left + " of " + solvent);
    }

    /** log P of acetone between chloroform and water 0.72 (Leo 1971): chloroform draws it out of the water. */
    @Test
    void chloroformHasARowOfItsOwn() {
        assertTrue(shareInWater("chloroform", "acetone") < 0.2);
    }

    private static double shareInWater(String organic, String solvent) {
        PhaseSplit split = split(organic, 16, solvent, 15, 20);
        return split.aqueous().grams(solvent)
                / (split.organic().grams(solvent) + split.aqueous().grams(solvent));
    }

    private static PhaseSplit split(String organic, double organicMl, String solvent, double solventMl, double water) {
        Ingredients all = Ingredients.of(organic, 0.8 * organicMl, organicMl)
                .plus(Ingredients.of(solvent, 0.8 * solventMl, solventMl))
                .plus(Ingredients.of(IngredientAccount.WATER, water, water));
        return new PhaseSplit(SmallBook.substances(), IngredientAccount.WATER::equals, all);
    }
}
