package workuptally.judgement.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;

/** Kept layers A1, A2 … with product by their assays, all but exact, against a theory of 20.0 g: limits 0.40 g. */
class SumOfLayersTest {
    @Test
    void layersThatFitTogetherAreAllLeft() {
        // 0.10 + 0.12 + 0.14 = 0.36 g = 1.8 %.
        SumOfLayers sums = sums("0.10", "0.12", "0.14");
        assertEquals(List.of("A1", "A2", "A3"), sum(sums).rest());
        assertEquals(1.8, sum(sums).allPercent(), 5e-3);
        assertEquals(0.36, sum(sums).restGrams(), 5e-3);
    }

    @Test
    void largestIsSetApartFirst() {
        // 0.10 + 0.30 + 0.15 = 0.55 g > 0.40 g; without A2 0.25 g.
        SumOfLayers sums = sums("0.10", "0.30", "0.15");
        assertTrue(sums.isSetApart("A2", "P"));
        assertEquals(List.of("A1", "A3"), sum(sums).rest());
        assertEquals(0.25, sum(sums).restGrams(), 5e-3);
        assertEquals(0.55, sum(sums).allGrams(), 5e-3);
    }

    @Test
    void layersAreSetApartUntilTheRestFits() {
        // 0.30 + 0.28 + 0.20 + 0.15 = 0.93 g; without A1 0.63 g; without A2 too 0.35 g.
        SumOfLayers sums = sums("0.30", "0.28", "0.20", "0.15");
        assertEquals(List.of("A3", "A4"), sum(sums).rest());
    }

    @Test
    void layerAboveItsOwnLimitDoesNotPushOthersOut() {
        // A1 0.50 g is held on its own; 0.20 + 0.15 = 0.35 g fits.
        SumOfLayers sums = sums("0.50", "0.20", "0.15");
        assertTrue(sums.isSetApart("A1", "P"));
        assertFalse(sums.isSetApart("A2", "P"));
        assertEquals(List.of("A2", "A3"), sum(sums).rest());
    }

    @Test
    void nonDetectsCountAtTheirLimit() {
        // <0.25 + <0.20 = 0.45 g: A1 is set apart.
        SumOfLayers sums = sums("<0.25", "<0.20");
        assertEquals(0.45, sum(sums).allGrams(), 5e-3);
        assertEquals(List.of("A2"), sum(sums).rest());
    }

    @Test
    void uncertaintyOfTheSumIsAddedOnce() {
        // 10 % of 0.10 g twice, half of each variance that of the calibration they share: u² = 0.0001 + 0.0002 g²;
        // 0.20 + 1.645 × 0.0173205 = 0.228492 g, not 0.2329 g.
        SumOfLayers sums = of("10", "0.10", "0.10");
        assertEquals(0.228492, sum(sums).restGrams(), 1e-5);
        assertEquals(0.228492, sum(sums).allGrams(), 1e-5);
    }

    @Test
    void whatWasNotFoundIsInTheUnassayedLayersTogetherOnlyOnce() {
        // 20.0 g of theory, 19.0 g pure isolated: A1, A2 and A3 hold at most about 1.0 g together, not 3.0 g.
        SmallBook small = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "19.00", "Assay", "100");
        for (String label : List.of("A1", "A2", "A3")) {
            small.row("layers", "Layer", label, "Phase", "aqueous", "Net", "50.00", "Status", "kept");
        }
        Book book = small.book();
        RunTally tally = new RunTallying(book.limits(), SmallBook.substances())
                .tally(book.runs().get(0));
        double each = tally.layer("A1")
                .orElseThrow()
                .contents()
                .get(0)
                .upperBoundGrams()
                .orElseThrow();
        assertTrue(each >= 1.0);
        assertEquals(each, sum(SumOfLayers.of(tally, book.limits())).allGrams(), 5e-3);
    }

    @Test
    void layerWithoutAnAssayIsNotSetApartSoThatAnotherPasses() {
        // 0.25 + 0.20 = 0.45 g holds A1. Without its assay A2 may hold as much as A1, and A1 stays held.
        assertTrue(sums("0.25", "0.20").isSetApart("A1", "P"));
        assertTrue(sums("0.25", "").isSetApart("A1", "P"));
        // 0.15 + 0.15 g fits, whatever more there may be in A2.
        assertFalse(sums("0.15", "").isSetApart("A1", "P"));
    }

    @Test
    void nonDetectMayHoldAsMuchAsALayerThatIsSetApart() {
        // A1 is held, but A2 <0.25 g beside as much of A1 is 0.50 g.
        assertTrue(sums("0.30", "<0.25").isSetApart("A2", "P"));
    }

    @Test
    void layerIsSetApartForTheProductThatItHolds() {
        // 0.10 + 0.30 + 0.15 g of P; of Q nothing was looked for
        SumOfLayers sums = sums("0.10", "0.30", "0.15");
        assertTrue(sums.isSetApart("A2", "P"));
        assertFalse(sums.isSetApart("A2", "Q"));
    }

    @Test
    void productWithoutTheoryHasNoSum() {
        assertTrue(sums("0.10").sum("Q").isEmpty());
    }

    private static SumOfLayers.Sum sum(SumOfLayers sums) {
        return sums.sum("P").orElseThrow();
    }

    private static SumOfLayers sums(String... grams) {
        return of("0.1", grams);
    }

    private static SumOfLayers of(String relativeUncertainty, String... grams) {
        SmallBook small = SmallBook.reaction();
        for (int i = 0; i < grams.length; i++) {
            String label = "A" + (i + 1);
            small.row("layers", "Layer", label, "Phase", "aqueous", "Net", "50.00", "Status", "kept")
                    .row(
                            "assays",
                            "Sample",
                            label,
                            "Substance",
                            "P",
                            "Method",
                            "HPLC",
                            "Result",
                            grams[i] + "0000",
                            "Unit",
                            "g")
                    .but("assays", "Relative standard uncertainty", relativeUncertainty);
        }
        Book book = small.book();
        return SumOfLayers.of(
                new RunTallying(book.limits(), SmallBook.substances())
                        .tally(book.runs().get(0)),
                book.limits());
    }
}
