package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.amounts.Ingredients;

/**
 * Solvent and water saturate each other. Mass % of the solvent table: ethyl acetate 7.7 in water (Merck Index) and 3.3 of water in it
 * (safety card), toluene 0.052 and 0.045 (from memory).
 */
class TwoPhasesTest {
    private static final Predicate<String> WITH_WATER =
            Set.of(IngredientAccount.WATER, "sodium chloride", IngredientAccount.SALTS)::contains;

    private static PhaseSplit split(Ingredients... parts) {
        Ingredients all = Ingredients.EMPTY;
        for (Ingredients part : parts) {
            all = all.plus(part);
        }
        return new PhaseSplit(SmallBook.substances(), WITH_WATER, all);
    }

    private static Ingredients of(String name, double grams, double millilitres) {
        return Ingredients.of(name, grams, millilitres);
    }

    @Test
    void solventAndWaterSaturateEachOther() {
        PhaseSplit split = split(of("ethyl acetate", 90, 100), of("water", 50, 50));
        assertEquals(50 * 7.7 / 92.3, split.aqueous().grams("ethyl acetate"), 1e-9);
        assertEquals(90 * 3.3 / 96.7, split.organic().grams("water"), 1e-9);
        assertEquals(
                90, split.organic().grams("ethyl acetate") + split.aqueous().grams("ethyl acetate"), 1e-9);
        assertEquals(50, split.organic().grams("water") + split.aqueous().grams("water"), 1e-9);
    }

    @Test
    void eachSolventTakesUpItsWater() {
        PhaseSplit split = split(of("ethyl acetate", 90, 100), of("toluene", 80, 92), of("water", 50, 50));
        assertEquals(90 * 3.3 / 96.7 + 80 * 0.045 / 99.955, split.organic().grams("water"), 1e-9);
        assertEquals(50 * 0.052 / 99.948, split.aqueous().grams("toluene"), 1e-9);
    }

    @Test
    void moreThanThereIsDoesNotDissolve() {
        PhaseSplit little = split(of("ethyl acetate", 2, 2.2), of("water", 50, 50));
        assertEquals(2, little.aqueous().grams("ethyl acetate"), 1e-9);
        assertEquals(0, little.organic().grams("ethyl acetate"), 1e-9);
        assertEquals(0, split(of("toluene", 80, 92)).aqueous().totalGrams(), 0);
        assertEquals(0, split(of("water", 50, 50)).organic().totalGrams(), 0);
    }

    @ParameterizedTest
    @CsvSource({
        // a tenth of the water layer and more is salt: a third of the solubility
        "5.5, 50, 7.7",
        "5.6, 50, 2.566667",
        "10, 90, 2.566667"
    })
    void saltDrivesTheSolventOutOfTheWater(double salt, double water, double massPercent) {
        PhaseSplit split =
                split(of("ethyl acetate", 90, 100), of("water", water, water), of("sodium chloride", salt, 0));
        assertEquals(
                (water + salt) * massPercent / (100 - massPercent),
                split.aqueous().grams("ethyl acetate"),
                1e-4);
        assertEquals(salt, split.aqueous().grams("sodium chloride"), 1e-9);
        assertEquals(0, split.organic().grams("sodium chloride"), 0);
    }

    @Test
    void withoutWaterWhatMixesWithItIsOrganic() {
        PhaseSplit split = split(of("methanol", 30, 38), of("toluene", 80, 92));
        assertEquals(30, split.organic().grams("methanol"), 1e-9);
        assertEquals(0, split.aqueous().totalGrams(), 1e-9);
        // also of a salt without water
        assertEquals(
                30,
                split(of("methanol", 30, 38), of("sodium chloride", 5, 0))
                        .organic()
                        .grams("methanol"),
                1e-9);
    }

    @Test
    void withoutAnotherSolventWhatMixesWithWaterStandsForThePhase() {
        // methanol 15 mL and water 20 mL, D = 0.3 (common practice): 20/(20 + 0.3 × 15)
        PhaseSplit split = split(of("methanol", 12, 15), of("water", 20, 20));
        assertEquals(20 / 24.5, split.aqueous().grams("methanol") / 12, 1e-6);
    }

    @Test
    void dissolvedSolidsGoWhereAnOrganicLiquidIs() {
        Ingredients solids = of(IngredientAccount.SOLIDS, 0, 5);
        assertEquals(
                5,
                split(solids, of("toluene", 80, 92), of("water", 50, 50))
                        .organic()
                        .parts()
                        .get(IngredientAccount.SOLIDS)
                        .millilitres(),
                1e-9);
        assertEquals(
                5,
                split(solids, of("water", 50, 50))
                        .aqueous()
                        .parts()
                        .get(IngredientAccount.SOLIDS)
                        .millilitres(),
                1e-9);
        assertEquals(
                5,
                split(solids, of(IngredientAccount.REACTANTS, 0, 8), of("water", 50, 50))
                        .organic()
                        .parts()
                        .get(IngredientAccount.SOLIDS)
                        .millilitres(),
                1e-9);
    }

    @Test
    void anythingElseGoesByWhatItIs() {
        PhaseSplit split = split(
                of(IngredientAccount.REACTANTS, 0, 8),
                of(IngredientAccount.SALTS, 0, 3),
                of("water", 50, 50),
                of("toluene", 80, 92));
        assertEquals(8, split.organic().parts().get(IngredientAccount.REACTANTS).millilitres(), 1e-9);
        assertEquals(3, split.aqueous().parts().get(IngredientAccount.SALTS).millilitres(), 1e-9);
    }
}
