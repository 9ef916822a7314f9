package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.YieldBasis;

/** A lot C1 of 18.00 g against a theory of 20.0 g. */
class LotAccountTest {
    @Test
    void crudeOverTheoryIsNetOverTheory() {
        // 18.00 / 20.0 = 90 %.
        assertEquals(90.0, lot(crude()).overTheoryPercent().orElseThrow().value(), 1e-9);
    }

    @Test
    void crudeWithoutAssayHasNoProductFraction() {
        LotTally lot = lot(crude());
        assertEquals(YieldBasis.NONE, lot.basis());
        assertTrue(lot.pureGrams().isEmpty());
    }

    @Test
    void assayInItsRowGivesTheProduct() {
        // 18.00 g × 0.95 = 17.1 g.
        LotTally lot = lot(crude().but("isolated", "Assay", "95"));
        assertEquals(17.1, lot.pureGrams().orElseThrow().value(), 1e-9);
        assertEquals(YieldBasis.ASSAY, lot.basis());
    }

    @Test
    void assayInItsRowGoesBeforeARowInAssays() {
        LotTally lot = lot(massPercent(crude().but("isolated", "Assay", "95"), "90"));
        assertEquals(0.95, lot.productFraction().orElseThrow().value(), 1e-12);
    }

    @Test
    void rowInAssaysStandsInForABlankColumn() {
        LotTally lot = lot(massPercent(crude(), "90"));
        assertEquals(16.2, lot.pureGrams().orElseThrow().value(), 1e-9);
        assertEquals(YieldBasis.ASSAY, lot.basis());
    }

    @Test
    void unreadableAssayIsNotReplacedByARowInAssays() {
        assertTrue(lot(massPercent(crude().but("isolated", "Assay", "smudged"), "90"))
                .pureGrams()
                .isEmpty());
    }

    @Test
    void assayBelowALimitGivesAnUpperBound() {
        // '<85': at most 18.00 × 0.85 = 15.3 g.
        LotTally lot = lot(crude().but("isolated", "Assay", "<85"));
        assertEquals(15.3, lot.pureGrams().orElseThrow().value(), 1e-9);
        assertEquals(YieldBasis.UPPER_LIMIT, lot.basis());
    }

    @Test
    void moleRatiosGiveAnUpperBound() {
        // w = 200 / (200 + 0.5 × 100) = 0.8.
        LotTally lot = lot(moleRatio(crude(), "S", "0.5"));
        assertEquals(0.8, lot.productFraction().orElseThrow().value(), 1e-12);
        assertEquals(YieldBasis.MOLE_RATIO_UPPER_BOUND, lot.basis());
    }

    @Test
    void moleRatiosOfSeveralSubstancesAddUp() {
        // Ethyl acetate 88.106 g/mol: w = 200 / (200 + 0.5 × 100 + 0.1 × 88.106) = 200 / 258.8106 = 0.772766.
        LotTally lot = lot(moleRatio(moleRatio(crude(), "S", "0.5"), "ethyl acetate", "0.1"));
        assertEquals(0.772766, lot.productFraction().orElseThrow().value(), 2e-6);
    }

    @Test
    void uncertaintyOfAMoleRatioIsThatOfARoutineSpectrum() {
        // w = M/(M + r·Ms), ∂w/∂r = −M·Ms/(M + r·Ms)² = −200 × 100 / 250² = −0.32; u(r) = 5 % of 0.5 = 0.025: u(w) =
        // 0.008.
        LotTally lot = lot(moleRatio(crude(), "S", "0.5"));
        assertEquals(0.008, lot.productFraction().orElseThrow().standardUncertainty(), 1e-9);
    }

    @Test
    void internalStandardGivesTheFractionByItsRawNumbers() {
        // (1.20/3) / (1.00/2) × (200/100) × (20.0/40.0) × 0.98 = 0.8 × 2 × 0.5 × 0.98 = 0.784.
        LotTally lot = lot(internalStandard(crude()));
        assertEquals(0.784, lot.productFraction().orElseThrow().value(), 1e-12);
        assertEquals(YieldBasis.ASSAY, lot.basis());
    }

    @Test
    void internalStandardWithAMissingNumberGivesNothing() {
        assertTrue(lot(internalStandard(crude()).but("nmr assays", "Sample mass", ""))
                .productFraction()
                .isEmpty());
    }

    @Test
    void purifiedLotWithoutAssayIsAnUpperBound() {
        LotTally lot = lot(crude().but("isolated", "Stage", "purified"));
        assertEquals(YieldBasis.ASSAY_NOT_RECORDED, lot.basis());
        assertEquals(18.00, lot.pureGrams().orElseThrow().value(), 1e-9);
    }

    @Test
    void calibrationSharedByLotAndLayerDoesNotAverageOut() {
        // Lot 16.2 g and layer 2 g, 2 % each, half of the variance shared: 18.2 g × 2 % × √½ = 0.257387 g together,
        // 0.324 g
        // and 0.04 g × √½ = 0.230842 g apart; 0.02 g of weighing × 0.9 and 1.2 % of the volume × 2 g = 0.024 g beside.
        RunTally tally = massPercent(crude(), "90")
                .but("assays", "Calibration", "cal-1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "110.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "20", "Unit", "mg/mL")
                .but("assays", "Calibration", "cal-1")
                .tally();
        double u = tally.lots()
                .get(0)
                .pureGrams()
                .orElseThrow()
                .plus(tally.layer("A1")
                        .orElseThrow()
                        .contents()
                        .get(0)
                        .massGrams()
                        .orElseThrow())
                .standardUncertainty();
        assertEquals(0.347039, u, 1e-5);
    }

    @Test
    void workupEndsAtTheCrudeAndNotAtItsCrops() {
        List<LotTally> lots = crude().but("isolated", "Assay", "95")
                .row("isolated", "Lot", "K1", "Product", "P", "Stage", "crop", "Net", "12.00")
                .tally()
                .lots();
        assertTrue(lots.get(0).endsWorkup());
        assertFalse(lots.get(1).endsWorkup());
    }

    @Test
    void cropThatCameStraightFromALayerEndsTheWorkup() {
        List<LotTally> lots = crude().row(
                        "isolated", "Lot", "K1", "Product", "P", "Stage", "crop", "Net", "12.00", "From", "RM")
                .tally()
                .lots();
        assertTrue(lots.get(1).endsWorkup());
    }

    @Test
    void assaysThatAgreeAreTheirMean() {
        // 2 % each: 90 and 92 differ by less than both leave open
        LotTally lot = lot(massPercent(massPercent(crude(), "90"), "92"));
        assertEquals(0.91, lot.productFraction().orElseThrow().value(), 1e-9);
        assertEquals(YieldBasis.ASSAY, lot.basis());
    }

    @Test
    void assaysThatDoNotAgreeAreAnUpperLimit() {
        LotTally lot = lot(massPercent(massPercent(crude(), "95"), "60"));
        assertEquals(0.95, lot.productFraction().orElseThrow().value(), 1e-9);
        assertEquals(YieldBasis.UPPER_LIMIT, lot.basis());
        // one in the middle does not reconcile them, nor does a limit
        assertEquals(
                0.95,
                lot(massPercent(massPercent(massPercent(crude(), "60"), "78"), "95"))
                        .productFraction()
                        .orElseThrow()
                        .value(),
                1e-9);
        LotTally limit = lot(massPercent(massPercent(crude(), "<96"), "95"));
        assertEquals(0.96, limit.productFraction().orElseThrow().value(), 1e-9);
        assertEquals(YieldBasis.UPPER_LIMIT, limit.basis());
        LotTally onlyLimit = lot(massPercent(crude(), "<96"));
        assertEquals(YieldBasis.UPPER_LIMIT, onlyLimit.basis());
    }

    @Test
    void assaysOfNothingOfAnotherUnitOrLotAreNone() {
        assertTrue(lot(massPercent(crude(), "0")).productFraction().isEmpty());
        assertTrue(lot(massPercent(crude(), "nd")).productFraction().isEmpty());
        assertTrue(lot(massPercent(crude(), "90").but("assays", "Unit", "mg/mL"))
                .productFraction()
                .isEmpty());
        assertTrue(lot(massPercent(crude(), "90").but("assays", "Substance", "S"))
                .productFraction()
                .isEmpty());
        assertTrue(lot(massPercent(crude(), "90").but("assays", "Sample", "C2"))
                .productFraction()
                .isEmpty());
    }

    private static boolean says(SmallBook book, String what, String unlockedBy) {
        return book.tally().notComputed().stream()
                .anyMatch(n -> n.what().equals(what) && n.unlockedBy().equals(unlockedBy));
    }

    @Test
    void anAssayOfNothingIsNoResult() {
        // the reader refuses 0: what the method would have seen is not known
        assertTrue(lot(massPercent(crude().but("isolated", "Assay", "0"), "90"))
                .pureGrams()
                .isEmpty());
        // not detected leaves the rows of Assays
        assertEquals(
                0.9,
                lot(massPercent(crude().but("isolated", "Assay", "nd"), "90"))
                        .productFraction()
                        .orElseThrow()
                        .value(),
                1e-9);
    }

    @Test
    void aMassThatIsMissingSaysWhichCellWouldGiveIt() {
        assertTrue(says(crude().but("isolated", "Net", ""), "mass of lot C1", "Gross and Tare of lot C1 in Isolated"));
        assertTrue(says(
                crude().but("isolated", "Net", "").but("isolated", "Gross", "93.00"),
                "mass of lot C1",
                "Tare of lot C1 in Isolated"));
        assertFalse(
                crude().tally().notComputed().stream().anyMatch(n -> n.what().equals("mass of lot C1")));
    }

    @Test
    void uncertaintyOfAnAssayIsItsPartOfTheResult() {
        // 3 % of 95 %
        LotTally lot =
                lot(crude().but("isolated", "Assay", "95").but("isolated", "Relative standard uncertainty", "3"));
        assertEquals(0.0285, lot.productFraction().orElseThrow().standardUncertainty(), 1e-9);
    }

    @Test
    void aLotOfTwoProductsIsNoYieldOfEither() {
        List<LotTally> lots = crude().row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150")
                .row("isolated", "Lot", "C1", "Product", "Q", "Stage", "crude", "Net", "18.00")
                .row("isolated", "Lot", "C2", "Product", "P", "Stage", "crude", "Net", "9.00")
                .tally()
                .lots();
        assertTrue(lots.get(0).overTheoryPercent().isEmpty());
        assertTrue(lots.get(1).overTheoryPercent().isEmpty());
        assertEquals(45.0, lots.get(2).overTheoryPercent().orElseThrow().value(), 1e-9);
    }

    @Test
    void aLotOfNoProductIsNoPartOfTheory() {
        LotTally lot = lot(crude().but("isolated", "Product", "S"));
        assertTrue(lot.overTheoryPercent().isEmpty());
        assertTrue(lot(crude().first("charges", "Actual amount", ""))
                .overTheoryPercent()
                .isEmpty());
    }

    @Test
    void aCropOfAnotherProductDoesNotFollowThisCrude() {
        List<LotTally> lots = crude().row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150")
                .row("isolated", "Lot", "K1", "Product", "Q", "Stage", "crop", "Net", "2.00")
                .row("isolated", "Lot", "K2", "Product", "P", "Stage", "", "Net", "2.00")
                .tally()
                .lots();
        assertTrue(lots.get(1).endsWorkup());
        assertTrue(lots.get(2).endsWorkup());
        assertTrue(lot(crude().but("isolated", "Stage", "purified")).endsWorkup());
    }

    private static SmallBook crude() {
        return SmallBook.reaction().row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00");
    }

    private static SmallBook massPercent(SmallBook book, String result) {
        return book.row(
                "assays", "Sample", "C1", "Substance", "P", "Method", "HPLC", "Result", result, "Unit", "% w/w");
    }

    private static SmallBook moleRatio(SmallBook book, String substance, String ratio) {
        return book.row("assays", "Sample", "C1", "Substance", substance, "Method", "NMR")
                .but("assays", "Result", ratio)
                .but("assays", "Unit", "mol ratio to product");
    }

    private static SmallBook internalStandard(SmallBook book) {
        return book.row("nmr assays", "Sample", "C1", "Substance", "P", "Standard", "Q", "Standard molar mass", "100")
                .but("nmr assays", "Standard purity", "98")
                .but("nmr assays", "Standard mass", "20.0")
                .but("nmr assays", "Sample mass", "40.0")
                .but("nmr assays", "Standard integral", "1.00")
                .but("nmr assays", "Standard nuclei", "2")
                .but("nmr assays", "Substance integral", "1.20")
                .but("nmr assays", "Substance nuclei", "3");
    }

    private static LotTally lot(SmallBook book) {
        return book.tally().lots().get(0);
    }
}
