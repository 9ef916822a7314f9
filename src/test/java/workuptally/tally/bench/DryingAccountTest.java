package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/**
 * 100 g of toluene over 5.00 g of sodium sulfate, of which 20.00 g of P go into the filtrate and 8.00 g stay as cake. Toluene holds 0.045 %
 * of water and weighs 0.8668 g/mL: 0.0450 g dissolved, 100/0.8668 × 0.01 × 0.9982 = 1.15159 g as drops; the agent takes up 0.6 g/g at best.
 */
class DryingAccountTest {
    private static final double WATER_GRAMS = 0.0450 + 1.15159;

    @Test
    void agentIsHeldAgainstTheWaterOfItsLayer() {
        DriedLayer layer = dried(book()).get(0);
        assertEquals(5.00, layer.agentGrams(), 1e-9);
        assertEquals(WATER_GRAMS, layer.waterGrams(), 1e-4);
        assertEquals(0.6, layer.capacityGramsPerGram(), 0);
        // 5.00 × 0.6 / 1.19659
        assertEquals(2.5071, layer.capacityRatio(), 1e-3);
        assertEquals("1", layer.step().number());
    }

    @Test
    void cakeIsNamedWithTheProductItHolds() {
        DriedLayer layer = dried(book()).get(0);
        assertEquals("K1", layer.cake());
        assertEquals("P", layer.product());
        // 3.00 g less 0 to 1.19659 g of water, 20 in 120 parts of it P
        assertEquals(0.30057, layer.productLowGrams().orElseThrow(), 1e-5);
        assertEquals(0.5, layer.productHighGrams().orElseThrow(), 1e-9);
        assertFalse(layer.rinsed());
    }

    @Test
    void rinsedCakeIsKnownToBe() {
        SmallBook book = book().row(
                        "workup",
                        "Step",
                        "3",
                        "Operation",
                        "rinse",
                        "From",
                        "K1",
                        "Material",
                        "toluene",
                        "Volume",
                        "5");
        assertTrue(dried(book).get(0).rinsed());
    }

    @Test
    void withoutACakeTheAgentIsStillHeldAgainstTheWater() {
        DriedLayer layer = dried(book().but("layers", "Net", "")).get(0);
        assertEquals(WATER_GRAMS, layer.waterGrams(), 1e-4);
        assertEquals("", layer.cake());
        assertEquals("", layer.product());
        assertTrue(layer.productLowGrams().isEmpty());
        assertTrue(layer.productHighGrams().isEmpty());
        assertFalse(layer.rinsed());
    }

    @Test
    void ofTwoPortionsOfAgentTheLastTellsOfTheCake() {
        SmallBook book = book().row(
                        "workup", "Step", "1.5", "Operation", "dry", "From", "O1", "Material", "sodium sulfate")
                .but("workup", "Mass", "1.00")
                .but("workup", "Gives other", "O1");
        assertEquals(
                List.of("", "K1"), dried(book).stream().map(DriedLayer::cake).toList());
    }

    @Test
    void dropsAreAssumedUnlessBrineWentBefore() {
        DriedLayer wet = dried(book()).get(0);
        assertTrue(wet.dropsAssumed());
        SmallBook washed = book().first("workup", "From", "O0")
                .row("workup", "Step", "0", "Operation", "wash", "From", "RM", "Material", "brine", "Volume", "20")
                .but("workup", "Gives organic", "O0")
                .but("workup", "Gives aqueous", "A0");
        DriedLayer after = dried(washed).get(0);
        assertFalse(after.dropsAssumed());
        // 0.045 % of 100 g
        assertEquals(0.045, after.waterGrams(), 1e-4);
        assertTrue(wet.assumption().contains("drops of 1 %"), wet.assumption());
        assertTrue(after.assumption().contains("no drops"), after.assumption());
        assertNotEquals(wet.assumption(), after.assumption());
    }

    @Test
    void onlyDryingWithAWeighedListedAgentOverSolventCounts() {
        assertEquals(List.of(), dried(book().first("workup", "Mass", "")));
        assertEquals(List.of(), dried(book().first("workup", "Material", "sand")));
        assertEquals(List.of(), dried(book().first("workup", "Operation", "combine")));
        // the second charge, the solvent, without an amount
        assertEquals(List.of(), dried(book().but("charges", "Actual amount", "")));
    }

    private static List<DriedLayer> dried(SmallBook book) {
        return book.tally().evidence().dried();
    }

    private static SmallBook book() {
        return SmallBook.reaction()
                .row("charges", "Material", "toluene", "Role", "solvent", "Actual amount", "100.00", "Actual unit", "g")
                .row("workup", "Step", "1", "Operation", "dry", "From", "RM", "Material", "sodium sulfate")
                .but("workup", "Mass", "5.00")
                .but("workup", "Gives other", "O1")
                .row("workup", "Step", "2", "Operation", "filter", "From", "O1", "Gives other", "O2+K1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O2", "Net", "20.00")
                .but("isolated", "Assay", "100")
                .row("layers", "Layer", "K1", "Phase", "solid", "Net", "8.00", "Status", "kept");
    }
}
