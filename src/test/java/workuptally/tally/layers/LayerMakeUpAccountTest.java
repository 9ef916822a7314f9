package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

/** 100 g of water with what is charged in it, all of it kept as A1 or what the rows say. Molar masses by IUPAC 2021. */
class LayerMakeUpAccountTest {
    private static SmallBook water() {
        return SmallBook.reaction()
                .row("charges", "Material", "water", "Role", "solvent", "Actual amount", "100.00", "Actual unit", "g");
    }

    private static SmallBook with(SmallBook book, String material, String grams) {
        return book.row("charges", "Material", material, "Role", "reagent", "Actual amount", grams, "Actual unit", "g");
    }

    private static SmallBook keptAs(SmallBook book, String pH) {
        return book.row("workup", "Step", "1", "Operation", "dilute", "From", "RM", "Gives other", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "150.00", "Status", "kept", "pH", pH);
    }

    private static Map<String, Double> grams(SmallBook book) {
        return book.tally().makeUp("A1").orElseThrow().grams();
    }

    private static double of(SmallBook book, String component) {
        return grams(book).getOrDefault(component, 0.0);
    }

    /** 4.00 g of sodium hydroxide, 39.997 g/mol, and 3.00 g of sulfuric acid, 98.072 g/mol with two protons. */
    private static SmallBook neutralised(String pH) {
        return keptAs(with(with(water(), "sodium hydroxide", "4.00"), "sulfuric acid", "3.00"), pH);
    }

    @Test
    void acidAndBaseReactAsFarAsTheyGo() {
        // 61.18 of 100.01 mmol of base meet the acid: 2.447 g, and 3.00 g of acid
        double base = 4.00 / 39.997;
        double reacted = 2 * 3.00 / 98.072;
        assertEquals(4.00 * (1 - reacted / base), of(neutralised(""), "sodium hydroxide"), 1e-3);
        assertEquals(3.00 + 4.00 * reacted / base, of(neutralised(""), LayerMakeUpAccount.SALTS), 1e-3);
        assertEquals(0, of(neutralised(""), "sulfuric acid"), 1e-3);
        // the rest of 150 g is water
        assertEquals(143, of(neutralised(""), "water"), 1e-6);
    }

    @Test
    void withoutAnAcidNothingReacts() {
        SmallBook base = keptAs(with(water(), "sodium hydroxide", "4.00"), "");
        assertEquals(4.00, of(base, "sodium hydroxide"), 1e-9);
        assertFalse(grams(base).containsKey(LayerMakeUpAccount.SALTS));
        // ammonium is too weak to count on
        SmallBook ammonium = keptAs(with(with(water(), "sodium carbonate", "4.00"), "ammonium chloride", "4.00"), "");
        assertFalse(grams(ammonium).containsKey(LayerMakeUpAccount.SALTS));
    }

    @Test
    void makeUpOfANeutralisedLayerIsThatOfItsWeighing() {
        LayerMakeUp makeUp = neutralised("").tally().makeUp("A1").orElseThrow();
        assertEquals(150, makeUp.totalGrams(), 1e-6);
        assertEquals("water", makeUp.grams().keySet().iterator().next());
        assertTrue(makeUp.weighed());
        assertFalse(makeUp.stated());
    }

    @ParameterizedTest
    @CsvSource({
        // strong base is gone below pH 11
        "sodium hydroxide, 10.9, true",
        "sodium hydroxide, 11, false",
        "sodium hydroxide, >10, false",
        "sodium hydroxide, <10, true",
        "sodium hydroxide, 10-12, false",
        "sodium hydroxide, 10-10.5, true",
        // strong acid above pH 3
        "sulfuric acid, 3.1, true",
        "sulfuric acid, 3, false",
        "sulfuric acid, <4, false",
        "sulfuric acid, >4, true",
        "sulfuric acid, 2-4, false",
        "sulfuric acid, 4-5, true",
        // carbonates and sulfide below pH 5
        "sodium carbonate, 4.9, true",
        "sodium carbonate, 5, false",
        "sodium hydrogencarbonate, 4.9, true",
        "sodium hydrogencarbonate, 5, false",
        "sodium sulfide, 4.9, true",
        "sodium sulfide, 5, false",
        // a weak acid or a salt is what it was
        "citric acid, 7, false",
        "sodium chloride, 4, false"
    })
    void aPhThatWasReadRulesOut(String material, String pH, boolean salt) {
        Map<String, Double> grams = grams(keptAs(with(water(), material, "5.00"), pH));
        assertEquals(salt ? 5.00 : 0, grams.getOrDefault(LayerMakeUpAccount.SALTS, 0.0), 1e-6);
        assertEquals(salt ? 0 : 5.00, grams.getOrDefault(material, 0.0), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"7.9, true", "8, false", ">7, false"})
    void anAmineBelowPh8IsItsSalt(String pH, boolean salt) {
        SmallBook book = keptAs(water(), pH)
                .but("layers", "Volume", "140")
                .row("assays", "Sample", "A1", "Substance", "triethylamine", "Method", "GC", "Result", "10")
                .but("assays", "Unit", "mg/mL");
        assertEquals(salt ? 1.4 : 0, of(book, "triethylamine" + LayerMakeUpAccount.AS_SALT), 1e-9);
        assertEquals(salt ? 0 : 1.4, of(book, "triethylamine"), 1e-9);
    }

    @Test
    void whatWasAssayedIsThereUnlessTheCompositionIsStated() {
        SmallBook book = keptAs(water(), "")
                .but("layers", "Volume", "140")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "10", "Unit", "mg/mL");
        assertEquals(1.4, of(book, "P"), 1e-9);
        assertEquals(150, book.tally().makeUp("A1").orElseThrow().totalGrams(), 1e-6);
        SmallBook stated = book.but("layers", "Composition", "water 90 %; P 6 %");
        LayerMakeUp makeUp = stated.tally().makeUp("A1").orElseThrow();
        assertTrue(makeUp.stated());
        assertEquals(9, makeUp.grams().get("P"), 1e-9);
        assertEquals(6, makeUp.grams().get(LayerFlow.UNSTATED), 1e-9);
        assertEquals(140, makeUp.millilitres(), 1e-9);
    }

    @Test
    void aLayerThatNobodyWeighedIsEstimatedByItsVolume() {
        SmallBook book = keptAs(with(water(), "sodium chloride", "10.00"), "").but("layers", "Net", "");
        LayerMakeUp whole = book.tally().makeUp("A1").orElseThrow();
        assertFalse(whole.weighed());
        // all of the water and salt that went in
        assertEquals(110, whole.totalGrams(), 1e-6);
        LayerMakeUp half = book.but("layers", "Volume", Double.toString(whole.millilitres() / 2))
                .tally()
                .makeUp("A1")
                .orElseThrow();
        assertEquals(55, half.totalGrams(), 1e-3);
        assertEquals(whole.millilitres() / 2, half.millilitres(), 1e-6);
        assertEquals(5, half.grams().get("sodium chloride"), 1e-3);
    }

    @Test
    void nothingIsEstimatedOfAPlanASampleOrALayerWithoutARow() {
        SmallBook book = keptAs(water(), "").but("layers", "Net", "");
        assertTrue(book.first("runs", "Status", "planned").tally().makeUp("A1").isEmpty());
        SmallBook rowless =
                water().row("workup", "Step", "1", "Operation", "dilute", "From", "RM", "Gives other", "A1");
        assertTrue(rowless.tally().makeUp("A1").isEmpty());
        SmallBook sample = water().row("workup", "Step", "1", "Operation", "sample", "From", "RM", "Gives other", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Status", "kept");
        assertTrue(sample.tally().makeUp("A1").isEmpty());
        assertEquals(
                10 * 0.9982,
                sample.but("layers", "Volume", "10")
                        .tally()
                        .makeUp("A1")
                        .orElseThrow()
                        .totalGrams(),
                0.9);
    }

    @ParameterizedTest
    @CsvSource({
        "EtOAc, ethyl acetate",
        "sat. NaHCO3, sodium hydrogencarbonate",
        "MgSO4, MgSO4",
        "benzocaine, benzocaine",
        "brine, sodium chloride"
    })
    void aSolventGoesByItsListedNameAndASolutionByItsSolute(String component, String name) {
        FollowedRun run = FollowedRun.of(water());
        assertEquals(name, new LayerMakeUpAccount(run.substances(), run.flow()).fullName(component));
    }
}
