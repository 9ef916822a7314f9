package workuptally.tally.waste;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;

/** Mass metrics of one extraction of 10.00 g S and 100.00 g water. */
class MetricsAccountTest {
    @Test
    void productIsWhatTheCrudeHoldsByAssay() {
        // 18.00 g × 0.90 = 16.20 g; 110 g / 16.20 g = 6.790.
        Metrics metrics = book("90", "99").tally().metrics().orElseThrow();
        assertFalse(metrics.ofPurified());
        assertEquals(110 / 16.2, metrics.pmi().value(), 1e-6);
    }

    @Test
    void purifiedLotIsTheProductWhereTheCrudeHasNoAssay() {
        // 15.00 g × 0.99 = 14.85 g; 110 g / 14.85 g = 7.407.
        Metrics metrics = book("", "99").tally().metrics().orElseThrow();
        assertTrue(metrics.ofPurified());
        assertEquals(14.85, metrics.productGrams().value(), 1e-9);
        assertEquals(110 / 14.85, metrics.pmi().value(), 1e-6);
    }

    @Test
    void withoutAnyAssayThereAreNoMetrics() {
        RunTally tally = book("", "").tally();
        assertTrue(tally.metrics().isEmpty());
        assertTrue(tally.notComputed().stream().anyMatch(n -> n.because().contains("no isolated mass of P")));
    }

    @Test
    void resolutionGivesHalfOfItsProductForItsAtoms() {
        // half of 200 g/mol P from 100 g/mol S: all atoms; the whole would be more than was charged
        Metrics resolution = book("90", "99")
                .first("runs", "Kind", "resolution")
                .tally()
                .metrics()
                .orElseThrow();
        assertEquals(100, resolution.atomEconomyPercent().orElseThrow(), 1e-9);
        assertTrue(book("90", "99")
                .tally()
                .metrics()
                .orElseThrow()
                .atomEconomyPercent()
                .isEmpty());
    }

    /** 10.00 g of ethyl acetate before the quench, 20.00 and 30.00 g of water from it on: 50 g; without a quench all 60 g. */
    @Test
    void workupBeginsWithTheQuench() {
        assertEquals(50, quenched("quench").workupInGrams().value(), 1e-9);
        assertEquals(60, quenched("wash").workupInGrams().value(), 1e-9);
        assertEquals(50, quenched("quench").waterGrams().value(), 1e-9);
        assertEquals(10, quenched("quench").solventGrams().value(), 1e-9);
    }

    private static Metrics quenched(String second) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "dilute", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Mass", "10.00")
                .row("workup", "Step", "2", "Operation", second, "From", "RM", "Material", "water", "Mass", "20.00")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "3", "Operation", "wash", "From", "O1", "Material", "water", "Mass", "30.00")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "21.00", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Net", "31.00", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00", "From", "O2")
                .but("isolated", "Assay", "90")
                .tally()
                .metrics()
                .orElseThrow();
    }

    /** Two layers of 60.00 g and 41.00 g are set aside, the second of them a quarter water: 101 g, 10.25 g water. */
    @Test
    void layersSetAsideAreNoWaste() {
        Metrics metrics = book("90", "99")
                .but("workup", "Gives other", "B1")
                .but("layers", "Net", "60.00")
                .but("layers", "Status", "to reuse")
                .but("layers", "Composition", "ethyl acetate 100 %")
                .row("layers", "Layer", "B1", "Phase", "organic", "Net", "41.00", "Status", "to reuse")
                .but("layers", "Composition", "ethyl acetate 75 %, water 25 %")
                .tally()
                .metrics()
                .orElseThrow();
        assertEquals(101, metrics.reusedGrams(), 1e-9);
        assertEquals(10.25, metrics.reusedWaterGrams(), 1e-9);
    }

    /** S, 10.00 g, and 50 mmol R of 80 g/mol, 4.00 g, as 50 mL of a solution: 14 g; P of 18.00 g × 0.90 = 16.2 g. */
    @Test
    void ofASolutionTheSoluteAloneIsAReactant() {
        SmallBook book = withReagent("80");
        Metrics metrics = book.tally().metrics().orElseThrow();
        assertEquals(14, metrics.reactantGrams().orElseThrow().value(), 1e-9);
        RunTally without = withReagent("").tally();
        assertTrue(without.metrics().orElseThrow().reactantGrams().isEmpty());
        assertTrue(without.notComputed().stream()
                .anyMatch(n -> n.what().equals("reaction mass efficiency")
                        && n.because().equals("no molar mass of R in toluene")));
        assertTrue(without.metrics().orElseThrow().atomEconomyPercent().isEmpty());
    }

    private static SmallBook withReagent(String molarMass) {
        return book("90", "99")
                .row("charges", "Material", "R in toluene", "Role", "reagent", "Coefficient", "1", "Density", "0.90")
                .but("charges", "Molar mass", molarMass)
                .but("charges", "Molarity", "1.0")
                .but("charges", "Actual amount", "50")
                .but("charges", "Actual unit", "mL");
    }

    /** P of 200 g/mol from 1 S of 100 g/mol is 200 %: a reactant is missing. With R of 150 g/mol it is 200/250 = 80 %. */
    @Test
    void productThatWeighsMoreThanItsReactantsLacksOne() {
        RunTally tally = book("90", "99").tally();
        assertTrue(tally.metrics().orElseThrow().atomEconomyPercent().isEmpty());
        assertTrue(tally.notComputed().stream().anyMatch(n -> n.what().equals("atom economy")));
        Metrics metrics = withReagent("150").tally().metrics().orElseThrow();
        assertEquals(80, metrics.atomEconomyPercent().orElseThrow(), 1e-9);
    }

    private static SmallBook book(String assayOfCrude, String assayOfPurified) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water")
                .but("workup", "Mass", "100.00")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "101.00", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00", "From", "O1")
                .but("isolated", "Assay", assayOfCrude)
                .row("isolated", "Lot", "P1", "Product", "P", "Stage", "purified", "Net", "15.00", "From", "C1")
                .but("isolated", "Assay", assayOfPurified);
    }
}
