package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

/**
 * Water takes an acyl chloride that no table lists as it takes the listed benzoyl chloride, so that a water layer holds none that could meet
 * water again; sulfonyl chlorides last (both common practice).
 */
class AcidChlorideInWaterTest {
    @ParameterizedTest
    @CsvSource({"benzoyl chloride, false", "4-methoxybenzoyl chloride, false", "4-chlorobenzenesulfonyl chloride, true"
    })
    void waterLayerHoldsWhatWaterLeaves(String name, boolean left) {
        boolean held = SmallBook.reaction()
                .row("charges", "Material", name, "Role", "reagent", "Actual amount", "3.4", "Actual unit", "g")
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Actual amount", "60")
                .but("charges", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "40")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .tally()
                .evidence()
                .meetings()
                .in("A1")
                .stream()
                .anyMatch(present -> present.name().equals(name));
        assertEquals(left, held);
    }
}
