package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.report.view.wording.Wording;
import workuptally.tally.RunTally;

/**
 * Theory 20.0 g, 17.10 g of P isolated, 1.0 g in A1. O1 (100 mL, 180 mg/mL) was assayed by an aliquot of 5.0 mL, 0.9 g, before it was washed
 * again.
 */
class AliquotWithoutSampleStepTest {
    @Test
    void aliquotOfAnAssayCountsAsProductTakenOut() {
        // 85.5 + 5.0 + 4.5 = 95.0 %.
        Closure closure = closure(assayed("5.0"));
        assertEquals(95.0, closure.percent().value(), 1e-9);
        assertTrue(closure.terms().stream().anyMatch(t -> t.place().equals("aliquot of O1")));
    }

    @Test
    void yieldWithTheAliquotPutBackStandsBeside() {
        // Of the 19.0 g in O1 the aliquot took 0.9 g: 85.5 / (1 − 0.9/19.0) = 89.7514 %.
        assertEquals(
                89.7514,
                assayed("5.0")
                        .tally()
                        .yields()
                        .get(0)
                        .aliquotCorrectedPercent()
                        .orElseThrow()
                        .value(),
                1e-4);
    }

    @Test
    void noteNamesWhatAliquotsTook() {
        Finding finding = assayed("5.0").review().findings().stream()
                .filter(f -> f.code().word().equals("aliquots-taken"))
                .findFirst()
                .orElseThrow();
        assertTrue(
                Wording.POINT.of(finding.seen()).startsWith("aliquots took 0.900 g of P, 4.5 % of theory"),
                Wording.POINT.of(finding.seen()));
    }

    @Test
    void sampleStepThatWasAssayedItselfIsNotCountedAgain() {
        SmallBook book = sampled(assayed("5.0"))
                .row("layers", "Layer", "Q1", "Phase", "organic", "Volume", "5.0", "Status", "used up")
                .row("assays", "Sample", "Q1", "Substance", "P", "Method", "HPLC", "Result", "0.9", "Unit", "g");
        assertEquals(95.0, closure(book).percent().value(), 1e-9);
    }

    @Test
    void sampleStepWithoutAnAssayOfItsOwnLeavesItToTheAliquot() {
        assertEquals(95.0, closure(sampled(assayed("5.0"))).percent().value(), 1e-9);
    }

    @Test
    void sampleWithoutAVolumeHasThatOfTheAliquotOfItsAssay() {
        // 5.0 mL × 180 mg/mL = 0.9 g.
        RunTally tally = sampled(assayed(""))
                .row("assays", "Sample", "Q1", "Substance", "P", "Method", "HPLC", "Result", "180", "Unit", "mg/mL")
                .but("assays", "Aliquot", "5.0")
                .tally();
        assertEquals(
                0.9,
                tally.layer("Q1")
                        .orElseThrow()
                        .contents()
                        .get(0)
                        .massGrams()
                        .orElseThrow()
                        .value(),
                1e-9);
        assertEquals(95.0, tally.closures().get(0).percent().value(), 1e-9);
    }

    @Test
    void layerThatNothingConsumedCountsWhole() {
        SmallBook book = assayed("5.0").but("assays", "Sample", "A1");
        assertTrue(closure(book).terms().stream().noneMatch(t -> t.place().startsWith("aliquot")));
    }

    @Test
    void aliquotLargerThanItsLayerIsNotCounted() {
        RunTally tally = assayed("500").tally();
        assertEquals(90.5, tally.closures().get(0).percent().value(), 1e-9);
        assertTrue(tally.notComputed().stream().anyMatch(n -> n.what().equals("aliquot of O1")));
    }

    private static Closure closure(SmallBook book) {
        return book.tally().closures().get(0);
    }

    private static SmallBook sampled(SmallBook book) {
        return book.row("workup", "Step", "2", "Operation", "sample", "From", "O1", "Gives other", "Q1");
    }

    private static SmallBook assayed(String aliquot) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A0")
                .row("workup", "Step", "3", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O2", "Net", "18.00")
                .but("isolated", "Assay", "95")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Status", "consumed")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "1.0", "Unit", "g")
                .row("assays", "Sample", "O1", "Substance", "P", "Method", "HPLC", "Result", "180", "Unit", "mg/mL")
                .but("assays", "Aliquot", aliquot);
    }
}
