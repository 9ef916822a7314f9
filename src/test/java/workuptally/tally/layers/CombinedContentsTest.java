package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.amounts.Content;

/** A1 and A2, assayed without a volume of their own, combined to AQ of 150 mL. */
class CombinedContentsTest {
    private static SmallBook book(String first, String second) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "70")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "70")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("workup", "Step", "3", "Operation", "combine", "From", "A1; A2", "Gives aqueous", "AQ")
                .row("layers", "Layer", "AQ", "Phase", "aqueous", "Volume", "150", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", first, "Unit", "mg/mL")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", second, "Unit", "mg/mL");
    }

    private static Content content(SmallBook book) {
        return book.tally().layer("AQ").orElseThrow().contents().get(0);
    }

    @Test
    void wholeIsNowhereStrongerThanTheStrongestPart() {
        // 0.10 mg/mL × 150 mL = 0.015 g at most, and 1.2 % of the volume (u of a measuring cylinder)
        Content bounded = content(book("<0.05", "<0.10"));
        assertEquals(Content.Kind.BOUND, bounded.kind());
        assertEquals(Content.Rests.PARENT, bounded.rests());
        assertEquals(0.015, bounded.upperBoundGrams().orElseThrow(), 0.015 * 0.03);
        assertTrue(bounded.evidence().endsWith("in A1, A2 before they were combined"), bounded.evidence());
    }

    @Test
    void detectedPartGivesABoundAndNoFigure() {
        Content bounded = content(book("<0.05", "2.0"));
        assertTrue(bounded.massGrams().isEmpty());
        assertTrue(bounded.upperBoundGrams().orElseThrow() >= 0.30);
    }

    @Test
    void partThatNobodyAssayedLeavesTheWholeOpen() {
        SmallBook book = book("<0.05", "<0.10").but("assays", "Substance", "S");
        assertEquals(Content.Kind.UNKNOWN, content(book).kind());
    }

    @Test
    void concentratingIsNoCombining() {
        SmallBook book = book("<0.05", "<0.10").but("workup", "Operation", "concentrate");
        assertEquals(Content.Kind.UNKNOWN, content(book).kind());
    }
}
