package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

/**
 * Acid that takes 100 mL of an aqueous layer from one pH to another, by the equations of Henderson and Hasselbalch with the pKa of the table
 * of solutes: carbonic acid 6.35 and 10.33, ammonium 9.25.
 */
class LayerBuffersTest {
    private static final double VOLUME = 100;

    private static SmallBook layer() {
        return SmallBook.reaction()
                .row("charges", "Material", "water", "Role", "solvent", "Actual amount", "100.00", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "dilute", "From", "RM", "Gives other", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Status", "kept");
    }

    private static SmallBook with(String material, String formula, String millimoles) {
        return layer().row("charges", "Material", material, "Role", "reagent", "Formula", formula)
                .but("charges", "Actual amount", millimoles)
                .but("charges", "Actual unit", "mmol");
    }

    private static double acid(SmallBook book, double from, double to) {
        FollowedRun run = FollowedRun.of(book);
        return new LayerBuffers(run.run(), run.substances(), run.flow()).acidMillimoles(run.layer("A1"), from, to);
    }

    private static double gas(SmallBook book, double from, double to) {
        FollowedRun run = FollowedRun.of(book);
        return new LayerBuffers(run.run(), run.substances(), run.flow())
                .carbonDioxideMillimoles(run.layer("A1"), from, to);
    }

    /** Of the water itself, mmol: hydrogen less hydroxide ion. */
    private static double water(double from, double to) {
        return VOLUME * (Math.pow(10, -to) - Math.pow(10, to - 14) - Math.pow(10, -from) + Math.pow(10, from - 14));
    }

    /** Protons on an acid of one constant. */
    private static double bound(double pKa, double pH) {
        return 1 / (1 + Math.pow(10, pH - pKa));
    }

    /** Protons on carbonate, 0 to 2. */
    private static double onCarbonate(double pH) {
        double h = Math.pow(10, -pH);
        double first = h / Math.pow(10, -10.33);
        double second = first * h / Math.pow(10, -6.35);
        return (first + 2 * second) / (1 + first + second);
    }

    private static double carbonate(double from, double to) {
        return onCarbonate(to) - onCarbonate(from);
    }

    @Test
    void waterItselfTakesAcid() {
        // 0.01 mol/L in 100 mL
        assertEquals(1.0, acid(layer(), 7, 2), 1e-6);
        assertEquals(-1.0, acid(layer(), 7, 12), 1e-6);
        assertEquals(water(9, 3), acid(layer(), 9, 3), 1e-12);
        assertEquals(0, acid(layer().but("layers", "Volume", ""), 7, 2), 0);
    }

    @Test
    void anAssayedAcidTakesItsProtonBack() {
        // 20 mg/mL of P, 200 g/mol: 10 mmol of pKa 4.20
        SmallBook book = layer().first("products", "Character", "acid")
                .first("products", "pKa", "4.20")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "20", "Unit", "mg/mL");
        assertEquals(10 * (bound(4.2, 4.2) - bound(4.2, 9)) + water(9, 4.2), acid(book, 9, 4.2), 1e-9);
        assertEquals(0, gas(book, 9, 4.2), 0);
    }

    @Test
    void anAssayedBaseTakesAProton() {
        SmallBook book = layer().first("products", "Character", "base")
                .first("products", "pKa", "9.00")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "20", "Unit", "mg/mL");
        assertEquals(10 * (bound(9, 7) - bound(9, 11)) + water(11, 7), acid(book, 11, 7), 1e-9);
    }

    @Test
    void carbonateTakesTwoProtonsAndGivesGas() {
        SmallBook book = with("sodium carbonate", "Na2CO3", "50");
        assertEquals(50 * carbonate(11, 3) + water(11, 3), acid(book, 11, 3), 1e-3);
        // what is ion at pH 11 and none at pH 3
        assertEquals(50 * (bound(6.35, 3) - bound(6.35, 11)), gas(book, 11, 3), 1e-3);
        assertEquals(0, gas(book, 3, 11), 0);
        // a charge without a formula is known by its name
        assertEquals(50 * carbonate(11, 3) + water(11, 3), acid(ofMass("sodium carbonate", "5.2994"), 11, 3), 1e-2);
    }

    private static SmallBook ofMass(String material, String grams) {
        return layer().row("charges", "Material", material, "Role", "reagent")
                .but("charges", "Actual amount", grams)
                .but("charges", "Actual unit", "g");
    }

    @ParameterizedTest
    @CsvSource({
        // of 50 mmol of carbonate the first 50 mmol of acid free no gas, each further one frees one
        "40, 50",
        "50, 50",
        "80, 20",
        "120, 0"
    })
    void acidThatWentInBeforeHasTakenCarbonDioxideOff(String acid, double left) {
        SmallBook book = with("sodium carbonate", "Na2CO3", "50")
                .row("charges", "Material", "hydrogen chloride", "Role", "reagent", "Formula", "HCl")
                .but("charges", "Actual amount", acid)
                .but("charges", "Actual unit", "mmol");
        assertEquals(left * (bound(6.35, 3) - bound(6.35, 8)), gas(book, 8, 3), 2e-3);
        assertEquals(left * carbonate(8, 3) + water(8, 3), acid(book, 8, 3), 2e-3);
    }

    @Test
    void strongBaseTakesTheAcidFirst() {
        SmallBook book = with("sodium carbonate", "Na2CO3", "50")
                .row("charges", "Material", "hydrogen chloride", "Role", "reagent", "Formula", "HCl")
                .but("charges", "Actual amount", "80")
                .but("charges", "Actual unit", "mmol")
                .row("charges", "Material", "sodium hydroxide", "Role", "reagent", "Formula", "NaOH")
                .but("charges", "Actual amount", "10")
                .but("charges", "Actual unit", "mmol");
        assertEquals(30 * (bound(6.35, 3) - bound(6.35, 8)), gas(book, 8, 3), 2e-3);
    }

    @Test
    void anAssayedAcidHasFreedCarbonDioxideToo() {
        // 60 mmol of P in 100 mL: 120 mg/mL
        SmallBook book = with("sodium carbonate", "Na2CO3", "50")
                .first("products", "Character", "acid")
                .first("products", "pKa", "4.20")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "120", "Unit", "mg/mL");
        assertEquals(40 * (bound(6.35, 3) - bound(6.35, 8)), gas(book, 8, 3), 2e-3);
    }

    @Test
    void anAmmoniumSaltBuffersByEachAmmonium() {
        assertEquals(
                20 * (bound(9.25, 7) - bound(9.25, 11)) + water(11, 7),
                acid(with("ammonium chloride", "NH4Cl", "20"), 11, 7),
                1e-3);
        assertEquals(
                40 * (bound(9.25, 7) - bound(9.25, 11)) + water(11, 7),
                acid(with("ammonium sulfate", "(NH4)2SO4", "20"), 11, 7),
                1e-3);
    }

    @Test
    void aSaltOfAStrongAcidBuffersNothing() {
        assertEquals(water(11, 7), acid(with("sodium chloride", "NaCl", "20"), 11, 7), 1e-9);
    }
}
