package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.amounts.Ingredients;

/** Estimates of how solvents that mix with water divide; 16 mL toluene, 15 mL of the solvent, 20 mL water. */
class PhaseSplitTest {
    @Test
    void tetrahydrofuranGoesByItsOctanolRatio() {
        // log P 0.46 (CRC Handbook): D = 2.884; 20 / (20 + 2.884 x 31) = 0.183 of it stays in the water.
        assertEquals(0.183, shareInWater("tetrahydrofuran"), 0.001);
    }

    @Test
    void methanolStaysWithTheWaterForTheMostPart() {
        // D = 0.3 (common practice): 20 / (20 + 0.3 x 31) = 0.683.
        assertEquals(0.683, shareInWater("methanol"), 0.001);
    }

    private static double shareInWater(String solvent) {
        Ingredients all = Ingredients.of("toluene", 13.87, 16)
                .plus(Ingredients.of(solvent, 13.3, 15))
                .plus(Ingredients.of(Materials.WATER, 20, 20));
        PhaseSplit split = new PhaseSplit(SmallBook.substances(), Materials.WATER::equals, all);
        return split.aqueous().grams(solvent) / 13.3;
    }
}
