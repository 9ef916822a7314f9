package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

/** Layer A1 of 100 mL with 2.0 g of product, extracted once before with 50 mL of ethyl acetate; theory 20.0 g. */
class ReextractionAccountTest {
    @Test
    void gainIsThatOfOneMorePortionAtTheRatioOfTheProduct() {
        // D = 4: 2.0 × (1 − 1/(1 + 4 × 50/100)) = 2.0 × (1 − 1/3) = 1.3333 g, 6.6667 % of theory.
        Reextraction gain = gains(neutral("4")).get(0);
        assertEquals(1, gain.extractant().portions());
        assertEquals(1.33333, gain.gain().grams(), 1e-5);
        assertEquals(6.66667, gain.gain().percentOfTheory(), 1e-5);
        assertTrue(gain.phSetting().pH().isEmpty());
    }

    @Test
    void secondPortionGainsLess() {
        // 2.0 × (1 − 1/9) = 1.7778 g.
        Reextraction gain = gains(neutral("4")).get(1);
        assertEquals(2, gain.extractant().portions());
        assertEquals(1.77778, gain.gain().grams(), 1e-5);
    }

    @Test
    void solventThatItCostsIsCounted() {
        // 50 mL of ethyl acetate at 0.900 g/mL (CRC Handbook: 0.9003 at 20 °C).
        assertEquals(45.0, gains(neutral("4")).get(0).extractant().solventGrams(), 0.1);
    }

    @Test
    void ownAssaysOnBothSidesOfTheContactGoBeforeTheModel() {
        // O1 120 mg/mL over A1 20 mg/mL: D = 6, not 4.
        SmallBook book = neutral("4")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "50", "Net", "48.00", "Status", "kept")
                .row("assays", "Sample", "O1", "Substance", "P", "Method", "HPLC", "Result", "120", "Unit", "mg/mL");
        assertEquals(6.0, gains(book).get(0).partition().distributionRatio(), 1e-9);
        assertEquals("assays of O1 and A1", gains(book).get(0).partition().origin());
    }

    @Test
    void acidIsBroughtToThePHWhereItIsNeutral() {
        // pKa 4.2, pH 8: D at pH 8 is 60/(1 + 10^3.8) = 0.0095; at pH 2.0 60/(1 + 10^−2.2) = 59.6238.
        // Bound at pH 2.0: 10 mmol × 1/(1 + 10^−2.2) = 9.93730 mmol, at pH 8 10 × 1/(1 + 10^3.8) = 0.00158 mmol; free
        // acid
        // 0.01 mol/L × 100 mL = 1 mmol, and 10^−6 mol/L of hydroxide 0.0001 mmol: 10.93582 mmol, 1.82264 mL of 6 mol/L.
        // Gain: 2.0 × (1 − 1/(1 + 59.6238 × 50/101.82264)) = 2.0 × (1 − 1/30.27827) = 1.933946 g.
        Reextraction gain = adjusted(acid("8.0"));
        assertEquals(2.0, gain.phSetting().pH().orElseThrow(), 1e-12);
        assertEquals(10.93582, gain.phSetting().acidMillimoles(), 1e-4);
        assertEquals(0, gain.phSetting().carbonDioxideMillimoles(), 0);
        assertEquals(1.93395, gain.gain().grams(), 1e-4);
    }

    @Test
    void bicarbonateStillInTheLayerTakesUpAcidAndGivesGas() {
        // 50 mmol NaHCO3 less the 10 mmol that the product took leaves 40 mmol. At pH 8.34, midway between 6.35 and
        // 10.33, carbonate
        // binds one proton on average, at pH 2.0 2 − 10^−4.35 = 1.99996: 39.99821 mmol. Product 10 × (0.993730 −
        // 0.0000724) =
        // 9.93658 mmol, free acid 1.00022 mmol: 50.93501 mmol.
        SmallBook book = bicarbonateWash("8.34");
        assertEquals(50.93501, adjusted(book).phSetting().acidMillimoles(), 2e-3);
        // 40 mmol × (1/(1 + 10^−1.99) − 10^−4.35) = 40 × 0.989825 = 39.593 mmol.
        assertEquals(39.593, adjusted(book).phSetting().carbonDioxideMillimoles(), 2e-3);
    }

    @Test
    void bicarbonateThatAcidUsedUpTakesNoneMore() {
        // 8 mmol NaHCO3 against 10 mmol of product: none left; product 10 × (0.993730 − 10^−2.8/(1 + 10^−2.8)) =
        // 9.92148 mmol and
        // free acid 1.00001 mmol at pH 7.0.
        SmallBook book = bicarbonateWash("7.0").but("workup", "Molarity", "0.16");
        assertEquals(10.92149, adjusted(book).phSetting().acidMillimoles(), 2e-3);
        assertEquals(0, adjusted(book).phSetting().carbonDioxideMillimoles(), 0);
    }

    @Test
    void acidThatCameAsItsSaltUsedUpNoBicarbonate() {
        // 10 mmol of NaOH were charged for the 10 mmol of product, so all 50 mmol are left: 50 × 0.999955 = 49.99776
        // mmol, product
        // 9.93658 mmol, free acid 1.00022 mmol: 60.93456 mmol.
        SmallBook book = bicarbonateWash("8.34")
                .row(
                        "charges",
                        "Material",
                        "sodium hydroxide",
                        "Role",
                        "base",
                        "Formula",
                        "NaOH",
                        "Actual amount",
                        "10")
                .but("charges", "Actual unit", "mmol");
        assertEquals(60.93456, adjusted(book).phSetting().acidMillimoles(), 2e-3);
    }

    @Test
    void ammoniumTakesUpBase() {
        // 50 mmol NH4Cl, pKa 9.25: 50 × (1/(1 + 10^1.95) − 1/(1 + 10^−5.25)) = 0.55478 − 49.99972 = −49.44494 mmol
        // beside −10.10569 mmol
        // for the product, pKa 9.0, and water from pH 4.0 to 11.2.
        SmallBook book = bicarbonateWash("4.0")
                .but("products", "Character", "base")
                .but("products", "pKa", "9.0")
                .but("workup", "Material", "sat. NH4Cl");
        assertEquals(-59.55063, adjusted(book).phSetting().acidMillimoles(), 2e-3);
    }

    @Test
    void freeHydroxideIsNeutralisedFirst() {
        // pH 13: 0.1 mol/L × 100 mL = 10 mmol beside 9.93730 mmol for the product and 1 mmol of free acid.
        assertEquals(20.93730, adjusted(acid("13.0")).phSetting().acidMillimoles(), 1e-4);
    }

    @Test
    void acidsOfTheLayerThatAreNotTheProductTakeAcidToo() {
        // Benzoic acid, pKa 4.2 (partition table 4.204), 12.212 mg/mL × 100 mL / 122.12 g/mol = 10 mmol: as much again
        // as the product.
        SmallBook book = acid("8.0")
                .row("assays", "Sample", "A1", "Substance", "benzoic acid", "Method", "HPLC", "Result", "12.212");
        book.but("assays", "Unit", "mg/mL").but("assays", "Formula", "C7H6O2");
        assertEquals(10.93582 + 9.93572, adjusted(book).phSetting().acidMillimoles(), 5e-3);
    }

    @Test
    void baseIsBroughtToThePHWhereItIsNeutralByBase() {
        // pKa 9.0 to pH 11.2: bound at pH 4.0 10 mmol × 1/(1 + 10^−5) = 9.99990, at 11.2 10 × 1/(1 + 10^2.2) = 0.06270
        // mmol; free acid
        // 10^−4 mol/L × 100 mL = 0.01 mmol, free base 10^−2.8 × 100 = 0.15849 mmol: −10.10569 mmol.
        SmallBook book = acid("4.0").but("products", "Character", "base").but("products", "pKa", "9.0");
        assertEquals(11.2, adjusted(book).phSetting().pH().orElseThrow(), 1e-12);
        assertEquals(-10.10569, adjusted(book).phSetting().acidMillimoles(), 1e-4);
    }

    @Test
    void acidThatIsAlreadyNeutralIsNotAcidified() {
        assertTrue(gains(acid("2.0")).stream().allMatch(g -> g.phSetting().pH().isEmpty()));
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

    @ParameterizedTest
    @CsvSource({
        // what the step added, mL of it; its volume counts where it is a contact, else half the layer
        "wash, 30, 30",
        "extract, 30, 30",
        "back-extract, 30, 30",
        "quench, 30, 40",
        "wash, '', 40"
    })
    void portionIsThatOfTheContactElseHalfTheLayer(String operation, String volume, double portion) {
        // 80 mL with 20 mg/mL: 1.6 g; D = 4
        Reextraction gain = gains(watered(operation, volume)).get(0);
        assertEquals("ethyl acetate", gain.extractant().solvent());
        assertEquals(portion, gain.extractant().volumeMillilitres(), 1e-9);
        assertEquals(1.6 * (1 - 1 / (1 + 4 * portion / 80)), gain.gain().grams(), 1e-9);
        assertEquals(
                2 * gain.extractant().solventGrams(),
                gains(watered(operation, volume)).get(1).extractant().solventGrams(),
                1e-9);
    }

    @Test
    void extractionOfTheRunGivesPortionAndSolventWhereTheStepHasNone() {
        SmallBook book = watered("quench", "30")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "hexane", "Volume", "11")
                .row("workup", "Step", "3", "Operation", "extract", "From", "O1", "Material", "water", "Volume", "12")
                .row(
                        "workup",
                        "Step",
                        "4",
                        "Operation",
                        "extract",
                        "From",
                        "O1",
                        "Material",
                        "toluene",
                        "Volume",
                        "13");
        Reextraction gain = gains(book).get(0);
        assertEquals("toluene", gain.extractant().solvent());
        assertEquals(13, gain.extractant().volumeMillilitres(), 1e-9);
    }

    @Test
    void solventIsThatOfTheReactionElseOneThatAStepAdded() {
        SmallBook book = watered("quench", "30")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "toluene", "Volume", "11");
        assertEquals("ethyl acetate", gains(book).get(0).extractant().solvent());
        // one that mixes with water, and one that is no solvent but a reagent, are passed over
        assertEquals(
                "toluene",
                gains(book.but("charges", "Material", "methanol"))
                        .get(0)
                        .extractant()
                        .solvent());
        assertEquals(
                "toluene",
                gains(book.but("charges", "Role", "reagent"))
                        .get(0)
                        .extractant()
                        .solvent());
        assertEquals(List.of(), gains(watered("quench", "30").but("charges", "Material", "methanol")));
    }

    @ParameterizedTest
    @CsvSource({"quench, methanol", "acidify, acetic acid", "basify, triethylamine"})
    void whatAStepAddsToReactIsNoSolventToExtractWith(String operation, String material) {
        SmallBook book = watered(operation, "30").but("workup", "Material", material);
        assertEquals("ethyl acetate", gains(book).get(0).extractant().solvent());
        assertEquals(List.of(), gains(book.but("charges", "Material", "water")));
        // a solvent that made the contact is
        assertEquals(
                "toluene",
                gains(book.but("workup", "Material", "toluene").but("workup", "Operation", "dilute"))
                        .get(0)
                        .extractant()
                        .solvent());
    }

    @Test
    void gainBelowTheThresholdIsNotWorthALine() {
        // 0.1 % of 20 g is 0.02 g. D = 0.019: one portion 2.0 × (1 − 1/1.0095) = 0.0188 g, two 0.0375 g.
        List<Reextraction> gains = gains(neutral("0.019"));
        assertEquals(
                List.of(2), gains.stream().map(r -> r.extractant().portions()).toList());
    }

    @Test
    void changeOfPHIsProposedWhereItMoreThanDoublesD() {
        // pKa 4.2: D at pH 2.0 is 59.62; at pH 4.2 it is 30, half of which is more than a doubling would need; at 4.3
        // 60/(1 + 10^0.1) = 26.6
        assertTrue(gains(acid("4.2")).stream().allMatch(g -> g.phSetting().pH().isEmpty()));
        assertTrue(gains(acid("4.3")).stream().anyMatch(g -> g.phSetting().pH().isPresent()));
    }

    @Test
    void neutralFormOnTheOtherSideOfThePHIsNotProposed() {
        // O1 and A1 hold 1 mg/mL and 20 mg/mL, D = 0.05, though the acid is neutral at pH 1.0 already: base would take
        // it to 2.0
        SmallBook book = acid("1.0").row("layers", "Layer", "O1", "Phase", "organic", "Volume", "50", "Net", "45.00");
        book.row("assays", "Sample", "O1", "Substance", "P", "Method", "HPLC", "Result", "1", "Unit", "mg/mL");
        assertEquals(0.05, gains(book).get(0).partition().distributionRatio(), 1e-9);
        assertTrue(gains(book).stream().allMatch(g -> g.phSetting().pH().isEmpty()));
        // and the same of a base at pH 13, neutral above 11.2
        book.first("products", "Character", "base")
                .first("products", "pKa", "9.0")
                .first("layers", "pH", "13.0");
        assertTrue(gains(book).stream().allMatch(g -> g.phSetting().pH().isEmpty()));
    }

    @Test
    void gainIsHeldAgainstTheTheoryOfItsOwnProduct() {
        // Q: 100 mmol of 100 g/mol, 10.0 g; 2.0 g of it in the layer and none of P
        SmallBook book = neutral("4")
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "100", "Coefficient", "1")
                .but("products", "Partition ratio", "4")
                .but("products", "Partition solvent", "ethyl acetate")
                .but("assays", "Substance", "q");
        assertEquals(13.3333, gains(book).get(0).gain().percentOfTheory(), 1e-4);
        assertEquals(2, gains(book).size());
    }

    @Test
    void sampleOfTheOrganicLayerTellsItsContent() {
        SmallBook book = sampled("O1");
        assertEquals(6.0, gains(book).get(0).partition().distributionRatio(), 1e-9);
        assertEquals("assays of S1 and A1", gains(book).get(0).partition().origin());
        // a sample of the aqueous layer does not, nor does a portion that is no sample
        assertEquals(4.0, gains(sampled("A1")).get(0).partition().distributionRatio(), 1e-9);
        assertEquals(
                4.0,
                gains(book.but("workup", "Operation", "combine"))
                        .get(0)
                        .partition()
                        .distributionRatio(),
                1e-9);
    }

    @Test
    void onlyAMeasuredContentOfTheSameSubstanceGivesARatio() {
        SmallBook book = neutral("4")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "50", "Net", "48.00", "Status", "kept")
                .row("assays", "Sample", "O1", "Substance", "S", "Method", "HPLC", "Result", "120", "Unit", "mg/mL");
        assertEquals(4.0, gains(book).get(0).partition().distributionRatio(), 1e-9);
        assertEquals(
                4.0,
                gains(book.but("assays", "Substance", "P").but("assays", "Result", "<120"))
                        .get(0)
                        .partition()
                        .distributionRatio(),
                1e-9);
        // by mass, but the volume it is in is not known
        assertEquals(
                4.0,
                gains(book.but("assays", "Result", "6")
                                .but("assays", "Unit", "g")
                                .but("layers", "Volume", ""))
                        .get(0)
                        .partition()
                        .distributionRatio(),
                1e-9);
    }

    @Test
    void acidThatWouldSetAToxicGasFreeIsNamed() {
        SmallBook book = acid("8.0")
                .row("charges", "Material", "sodium cyanide", "Role", "reagent", "Actual amount", "1")
                .but("charges", "Actual unit", "g");
        assertTrue(
                adjusted(book).phSetting().acidCaution().contains("sodium cyanide"),
                adjusted(book).phSetting().acidCaution());
        assertEquals(
                List.of(),
                gains(book).stream()
                        .filter(g -> g.phSetting().pH().isEmpty())
                        .flatMap(g -> g.phSetting().acidGases().stream())
                        .toList());
        // base to set the pH meets no acid
        book.but("products", "Character", "base").but("products", "pKa", "9.0").but("layers", "pH", "4.0");
        assertEquals("", adjusted(book).phSetting().acidCaution());
    }

    @Test
    void littleCarbonDioxideIsNotWorthACaution() {
        // 50 mL of 0.216 mol/L: 10.8 mmol less the 10 that the product took leave 0.8 mmol, below 1 mmol
        SmallBook book = bicarbonateWash("8.34").but("workup", "Molarity", "0.216");
        assertEquals(0, adjusted(book).phSetting().carbonDioxideMillimoles(), 0);
        // 12 mmol leave 2 mmol, 2 × 0.98983 = 1.97966 mmol
        assertEquals(
                1.9797,
                adjusted(book.but("workup", "Molarity", "0.24")).phSetting().carbonDioxideMillimoles(),
                2e-3);
    }

    private static SmallBook sampled(String from) {
        return neutral("4")
                .row("workup", "Step", "2", "Operation", "sample", "From", from, "Gives other", "S1")
                .row("layers", "Layer", "S1", "Volume", "1", "Net", "0.95")
                .row("assays", "Sample", "S1", "Substance", "P", "Method", "HPLC", "Result", "120", "Unit", "mg/mL");
    }

    /** The 80 mL layer came from water put to a solution in ethyl acetate. */
    private static SmallBook watered(String operation, String volume) {
        return neutral("4")
                .row(
                        "charges",
                        "Material",
                        "ethyl acetate",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "90",
                        "Actual unit",
                        "g")
                .but("workup", "Operation", operation)
                .but("workup", "Material", "water")
                .but("workup", "Volume", volume)
                .but("layers", "Volume", "80");
    }

    private static List<Reextraction> gains(SmallBook book) {
        return book.tally().evidence().reextractions();
    }

    private static Reextraction adjusted(SmallBook book) {
        return gains(book).stream()
                .filter(g -> g.phSetting().pH().isPresent() && g.extractant().portions() == 1)
                .findFirst()
                .orElseThrow();
    }

    /** The layer came from 50 mL of 1.0 mol/L sodium hydrogencarbonate that washed an ethyl acetate solution. */
    private static SmallBook bicarbonateWash(String pH) {
        return acid(pH).row(
                        "charges",
                        "Material",
                        "ethyl acetate",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "90",
                        "Actual unit",
                        "g")
                .but("workup", "Operation", "wash")
                .but("workup", "Material", "sat. NaHCO3")
                .but("workup", "Molarity", "1.0");
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
