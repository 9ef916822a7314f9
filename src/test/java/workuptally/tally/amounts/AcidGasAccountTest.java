package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/** Gases that acid sets free, as in any laboratory safety text: hydrogen cyanide of cyanides, hydrogen sulfide of sulfides. */
class AcidGasAccountTest {
    @Test
    void chargesAndAdditionsAreNamedInTheOrderOfTheRun() {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "sodium sulfide")
                .row("workup", "Step", "2", "Operation", "dry", "From", "RM", "Material", "")
                .row("charges", "Material", "sodium cyanide", "Role", "reagent", "Actual amount", "5");
        List<AcidGas> gases = of(book);
        assertEquals(
                List.of("sodium cyanide", "sodium sulfide"),
                gases.stream().map(AcidGas::material).distinct().toList());
        assertTrue(gases.get(0).consequence().contains("HCN"), gases.toString());
        assertTrue(gases.stream().anyMatch(g -> g.consequence().contains("H2S")), gases.toString());
    }

    @Test
    void carbonDioxideAndWhatWaterHasUsedUpAreNoDanger() {
        assertEquals(List.of(), of(charged("sodium hydrogencarbonate")));
        assertEquals(List.of(), of(charged("thionyl chloride")));
        assertEquals(List.of(), of(charged("toluene")));
    }

    private static SmallBook charged(String material) {
        return SmallBook.reaction().row("charges", "Material", material, "Role", "reagent", "Actual amount", "5");
    }

    private static List<AcidGas> of(SmallBook book) {
        return AcidGasAccount.of(book.run(), SmallBook.substances());
    }
}
