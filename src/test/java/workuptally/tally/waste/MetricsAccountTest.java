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
