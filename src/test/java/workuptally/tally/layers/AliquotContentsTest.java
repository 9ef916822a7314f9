package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;

/** O1, 100 mL with 20 mg/mL of P, is worked up further; an aliquot of 5 mL was taken for its assay. */
class AliquotContentsTest {
    private static SmallBook washed(String aliquot) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "toluene", "Volume", "90")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "40")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Status", "consumed")
                .row("assays", "Sample", "O1", "Substance", "P", "Method", "HPLC", "Result", "20", "Unit", "mg/mL")
                .but("assays", "Aliquot", aliquot);
    }

    private static List<Content> taken(SmallBook book) {
        return book.tally().layer("O1").orElseThrow().taken();
    }

    @Test
    void anAliquotTakesItsShareOfTheLayer() {
        // 2.000 g × 5/100, and 10 mmol × 5/100
        Content taken = taken(washed("5")).get(0);
        assertEquals("P", taken.substance());
        assertEquals(0.1, taken.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(0.5, taken.amountMillimoles().orElseThrow().value(), 1e-9);
        assertEquals(0.5, taken.percentOf().orElseThrow(), 1e-9);
        double bound = washed("5")
                .tally()
                .layer("O1")
                .orElseThrow()
                .contents()
                .get(0)
                .upperBoundGrams()
                .orElseThrow();
        assertEquals(bound / 20, taken.upperBoundGrams().orElseThrow(), 1e-9);
        assertTrue(taken.evidence().startsWith("aliquot of 5 mL, "), taken.evidence());
    }

    @Test
    void theLargerOfTwoAliquotsCounts() {
        SmallBook two = washed("5")
                .row("assays", "Sample", "O1", "Substance", "p", "Method", "GC", "Result", "20", "Unit", "mg/mL")
                .but("assays", "Aliquot", "8")
                .row("assays", "Sample", "O1", "Substance", "S", "Method", "GC", "Result", "1", "Unit", "mg/mL")
                .but("assays", "Aliquot", "20");
        assertEquals(0.16, taken(two).get(0).massGrams().orElseThrow().value(), 1e-6);
        assertEquals(2, taken(two).size());
    }

    @Test
    void withoutAnAliquotNothingIsTaken() {
        assertEquals(List.of(), taken(washed("")));
        assertEquals(List.of(), taken(washed("0")));
        assertEquals(List.of(), taken(washed("5").but("assays", "Result", "<20")));
        assertEquals(List.of(), taken(washed("5").first("layers", "Volume", "")));
    }

    @Test
    void anAliquotLargerThanItsLayerIsLeftOutAndSaid() {
        RunTally tally = washed("101").tally();
        assertEquals(List.of(), tally.layer("O1").orElseThrow().taken());
        assertTrue(tally.notComputed().stream()
                .anyMatch(
                        n -> n.what().equals("aliquot of O1") && n.unlockedBy().contains("Aliquot in Assays")));
        // all of it is possible
        assertEquals(2, taken(washed("100")).get(0).massGrams().orElseThrow().value(), 1e-9);
    }

    @Test
    void aLayerThatNothingConsumedCountsWhole() {
        SmallBook kept = SmallBook.reaction()
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Status", "kept")
                .row("assays", "Sample", "O1", "Substance", "P", "Method", "HPLC", "Result", "20", "Unit", "mg/mL")
                .but("assays", "Aliquot", "5");
        assertEquals(List.of(), taken(kept));
    }

    private static SmallBook sampled(String result, String aliquot) {
        return washed("5")
                .row("workup", "Step", "1a", "Operation", "sample", "From", "O1", "Gives other", "Q1")
                .row("assays", "Sample", "Q1", "Substance", "P", "Method", "HPLC", "Result", result, "Unit", "mg/mL")
                .but("assays", "Aliquot", aliquot);
    }

    @Test
    void aSampleOfTheStepsThatWasAssayedCountsByItself() {
        RunTally tally = sampled("20", "2").tally();
        assertEquals(List.of(), tally.layer("O1").orElseThrow().taken());
        // its volume is the aliquot of its own assay
        assertEquals(
                2,
                tally.layer("Q1")
                        .orElseThrow()
                        .volumeMillilitres()
                        .orElseThrow()
                        .value(),
                1e-9);
        assertEquals(
                0.04,
                tally.layer("Q1")
                        .orElseThrow()
                        .contents()
                        .get(0)
                        .massGrams()
                        .orElseThrow()
                        .value(),
                1e-9);
        // one that was assayed for something else does not
        assertEquals(
                1, taken(sampled("20", "2").but("assays", "Substance", "S")).size());
        SmallBook larger = sampled("20", "2")
                .row("assays", "Sample", "Q1", "Substance", "S", "Method", "GC", "Result", "1", "Unit", "mg/mL")
                .but("assays", "Aliquot", "3");
        assertEquals(
                3,
                larger.tally()
                        .layer("Q1")
                        .orElseThrow()
                        .volumeMillilitres()
                        .orElseThrow()
                        .value(),
                1e-9);
        assertTrue(sampled("20", "0")
                .tally()
                .layer("Q1")
                .orElseThrow()
                .volumeMillilitres()
                .isEmpty());
    }
}
