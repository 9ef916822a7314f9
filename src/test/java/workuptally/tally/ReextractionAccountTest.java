package workuptally.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/** Layer A1 of 100 mL with 2.0 g of product, extracted once before with 50 mL of ethyl acetate; theory 20.0 g. */
class ReextractionAccountTest {
    @Test
    void gainIsThatOfOneMorePortionAtTheRatioOfTheProduct() {
        // D = 4: 2.0 × (1 − 1/(1 + 4 × 50/100)) = 2.0 × (1 − 1/3) = 1.3333 g, 6.6667 % of theory.
        Reextraction gain = gains(neutral("4")).get(0);
        assertEquals(1, gain.portions());
        assertEquals(1.33333, gain.gainGrams(), 1e-5);
        assertEquals(6.66667, gain.gainPercentOfTheory(), 1e-5);
        assertTrue(gain.pH().isEmpty());
    }

    @Test
    void secondPortionGainsLess() {
        // 2.0 × (1 − 1/9) = 1.7778 g.
        Reextraction gain = gains(neutral("4")).get(1);
        assertEquals(2, gain.portions());
        assertEquals(1.77778, gain.gainGrams(), 1e-5);
    }

    @Test
    void solventThatItCostsIsCounted() {
        // 50 mL of ethyl acetate at 0.900 g/mL (CRC Handbook: 0.9003 at 20 °C).
        assertEquals(45.0, gains(neutral("4")).get(0).solventGrams(), 0.1);
    }

    @Test
    void ownAssaysOnBothSidesOfTheContactGoBeforeTheModel() {
        // O1 120 mg/mL over A1 20 mg/mL: D = 6, not 4.
        SmallBook book = neutral("4")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "50", "Net", "48.00", "Status", "kept")
                .row("assays", "Sample", "O1", "Substance", "P", "Method", "HPLC", "Result", "120", "Unit", "mg/mL");
        assertEquals(6.0, gains(book).get(0).distributionRatio(), 1e-9);
        assertEquals("assays of O1 and A1", gains(book).get(0).origin());
    }

    @Test
    void acidIsBroughtToThePHWhereItIsNeutral() {
        // pKa 4.2, pH 8: D at pH 8 is 60/(1 + 10^3.8) = 0.0095; at pH 2.0 60/(1 + 10^−2.2) = 59.6238.
        // Acid: 10 mmol × 10^3.8/(1 + 10^3.8) = 9.99842 mmol, and 0.01 mol/L × 100 mL = 1 mmol: 10.99842 mmol, 1.83307
        // mL of 6 mol/L.
        // Gain: 2.0 × (1 − 1/(1 + 59.6238 × 50/101.83307)) = 2.0 × (1 − 1/30.27527) = 1.933940 g.
        Reextraction gain = gains(acid("8.0")).stream()
                .filter(g -> g.pH().isPresent() && g.portions() == 1)
                .findFirst()
                .orElseThrow();
        assertEquals(2.0, gain.pH().orElseThrow(), 1e-12);
        assertEquals(10.99842, gain.acidMillimoles(), 1e-4);
        assertEquals(1.93394, gain.gainGrams(), 1e-4);
    }

    @Test
    void acidThatIsAlreadyNeutralIsNotAcidified() {
        assertTrue(gains(acid("2.0")).stream().allMatch(g -> g.pH().isEmpty()));
    }

    @Test
    void acidOfUnknownPHHasNoGain() {
        assertEquals(List.of(), gains(acid("")));
    }

    @Test
    void layerWithoutAVolumeOfItsOwnIsPassedOverWithoutEndingTheReview() {
        assertEquals(List.of(), gains(neutral("4").but("layers", "Volume", "0").but("assays", "Unit", "g")));
    }

    @Test
    void measuredZeroHasNothingToGain() {
        assertEquals(List.of(), gains(neutral("4").but("assays", "Result", "0")));
    }

    private static List<Reextraction> gains(SmallBook book) {
        return book.tally().evidence().reextractions();
    }

    private static SmallBook acid(String pH) {
        return neutral("60")
                .but("products", "Character", "acid")
                .but("products", "pKa", "4.2")
                .but("layers", "pH", pH);
    }

    private static SmallBook neutral(String partitionRatio) {
        return SmallBook.reaction()
                .but("products", "Partition ratio", partitionRatio)
                .but("products", "Partition solvent", "ethyl acetate")
                .row(
                        "workup",
                        "Step",
                        "1",
                        "Operation",
                        "extract",
                        "From",
                        "RM",
                        "Material",
                        "ethyl acetate",
                        "Volume",
                        "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "102.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "20", "Unit", "mg/mL");
    }
}
