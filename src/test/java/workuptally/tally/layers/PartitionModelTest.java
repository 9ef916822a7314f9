package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

class PartitionModelTest {
    @Test
    void neutralProductDividesByItsPartitionRatio() {
        PartitionModel model = of("Partition ratio", "25").orElseThrow();
        assertEquals(25, model.distributionRatio(2), 1e-12);
        assertEquals(25, model.distributionRatio(12), 1e-12);
    }

    @Test
    void acidDividesByTheShareThatIsNeutral() {
        // D = 60 / (1 + 10^(5.2 − 4.2)) = 60 / 11.
        PartitionModel model =
                of("Partition ratio", "60", "Character", "acid", "pKa", "4.2").orElseThrow();
        assertEquals(60 / 11.0, model.distributionRatio(5.2), 1e-9);
    }

    @Test
    void baseDividesByTheShareThatIsNeutral() {
        // D = 60 / (1 + 10^(9.2 − 8.2)) = 60 / 11.
        PartitionModel model =
                of("Partition ratio", "60", "Character", "base", "pKa", "9.2").orElseThrow();
        assertEquals(60 / 11.0, model.distributionRatio(8.2), 1e-9);
    }

    @Test
    void acidIsNeutralTwoUnitsBelowItsPKaAndABaseAbove() {
        assertEquals(
                2.0,
                of("Partition ratio", "60", "Character", "acid", "pKa", "4.2")
                        .orElseThrow()
                        .pHOfNeutralForm(2.2),
                1e-12);
        assertEquals(
                11.4,
                of("Partition ratio", "60", "Character", "base", "pKa", "9.2")
                        .orElseThrow()
                        .pHOfNeutralForm(2.2),
                1e-12);
    }

    @Test
    void ionisableProductWithoutPKaHasNoModel() {
        assertTrue(of("Partition ratio", "60", "Character", "acid").isEmpty());
    }

    @Test
    void productWithoutPartitionRatioOrLogPHasNoModel() {
        assertTrue(of().isEmpty());
    }

    @Test
    void ratioOfAnotherSolventIsKnownToAFactorOfThree() {
        assertEquals(
                3,
                of("Partition ratio", "60", "Partition solvent", "toluene")
                        .orElseThrow()
                        .factor(),
                1e-12);
    }

    @Test
    void ratioOfTheSameSolventIsKnownBetterWhateverItIsCalled() {
        assertEquals(
                1.2,
                of("Partition ratio", "60", "Partition solvent", "EtOAc")
                        .orElseThrow()
                        .factor(),
                1e-12);
    }

    @Test
    void octanolIsOnlyAGuide() {
        // log P 1.5: P = 31.6228, within a factor of 10.
        PartitionModel model = of("Log P", "1.5").orElseThrow();
        assertEquals(31.6228, model.distributionRatio(7), 1e-4);
        assertEquals(10, model.factor(), 1e-12);
    }

    private static Optional<PartitionModel> of(String... headingsAndCells) {
        SmallBook book = SmallBook.reaction();
        for (int i = 0; i < headingsAndCells.length; i += 2) {
            book.but("products", headingsAndCells[i], headingsAndCells[i + 1]);
        }
        return PartitionModel.of(
                book.run().products().get(0), "ethyl acetate", new IngredientAccount(SmallBook.substances()));
    }
}
