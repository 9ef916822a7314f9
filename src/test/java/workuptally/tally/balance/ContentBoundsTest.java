package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Content.Kind;

/** Bounds on the product in a layer A1 that was not assayed; theory 20.0 g. */
class ContentBoundsTest {
    @Test
    void conservationBoundsByTheoryLessWhatWasFound() {
        // Theory 20.0 g, u 0.36056 % = 0.072111 g. Lot 18.00 g × 1.00, u √(0.02² + 0.18²) = 0.181108 g.
        // 20.0 − 18.0 + 1.645 × √(0.072111² + 0.181108²) = 2 + 1.645 × 0.194936 = 2.320670 g.
        Content content = contentOfA1(withLot("100"));
        assertEquals(Kind.BOUND, content.kind());
        assertEquals(2.320670, content.upperBoundGrams().orElseThrow(), 1e-5);
        assertTrue(content.massGrams().isEmpty());
    }

    @Test
    void conservationIsNeverBelowZero() {
        SmallBook book = withLot("100").but("isolated", "Net", "25.00");
        assertEquals(0, contentOfA1(book).upperBoundGrams().orElseThrow(), 1e-12);
    }

    @Test
    void lotWithoutAssayGivesNoBoundByConservation() {
        assertEquals(Kind.UNKNOWN, contentOfA1(withLot("")).kind());
    }

    @Test
    void lotKnownOnlyAsAnUpperBoundGivesNoBoundByConservation() {
        // 18.00 g of at most 100 %: there may be less in the lot, and so more in the layer, than 2 g.
        assertEquals(Kind.UNKNOWN, contentOfA1(withLot("<100")).kind());
        assertEquals(
                Kind.UNKNOWN,
                contentOfA1(withLot("").but("isolated", "Stage", "purified")).kind());
    }

    @Test
    void ragIsBoundedByTheStrongestSolutionOfTheRun() {
        // A2 5 mg/mL: 10 mL hold 0.05 g; u of the strength: HPLC 2 % (the volume of A2 cancels); of 10 mL 0.6 mL = 6 %:
        // √(2² + 6²) = 6.324555 %; 0.05 × (1 + 1.645 × 0.06324555) = 0.055202 g.
        SmallBook book = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "rag", "Volume", "10", "Net", "10.00", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "5", "Unit", "mg/mL");
        Content content = contentOfA1(book);
        assertEquals(Kind.BOUND, content.kind());
        assertEquals(0.055202, content.upperBoundGrams().orElseThrow(), 1e-5);
    }

    @Test
    void smallerOfTwoBoundsCounts() {
        SmallBook book = withLot("100")
                .but("layers", "Phase", "rag")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "1", "Unit", "mg/mL");
        // 100 mL at 1 mg/mL is about 0.1 g, against about 2 g by conservation.
        assertTrue(contentOfA1(book).upperBoundGrams().orElseThrow() < 0.12);
    }

    private static SmallBook withLot(String assay) {
        return SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00", "Assay", assay)
                .but("isolated", "Relative standard uncertainty", "1");
    }

    private static Content contentOfA1(SmallBook book) {
        return book.tally().layer("A1").orElseThrow().contents().get(0);
    }
}
