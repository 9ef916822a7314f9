package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.ProductYield.PercentOf;
import workuptally.tally.amounts.ProductYield.Stage;
import workuptally.tally.amounts.YieldBasis;

/** Yields against a theory of 20.0 g. */
class YieldAccountTest {
    @Test
    void yieldIsAssayedMassOverTheory() {
        // 18.00 g × 0.95 / 20.0 g = 85.5 %.
        ProductYield yield = only(lot("C1", "crude", "18.00", "95"));
        assertEquals(85.5, yield.percent().value(), 1e-9);
        assertEquals(PercentOf.THEORY, yield.percentOf());
    }

    @Test
    void lotsOfOneProductAddUp() {
        // (10.00 × 0.95 + 8.00 × 0.90) / 20.0 = (9.5 + 7.2) / 20.0 = 83.5 %.
        SmallBook book = lot("C1", "crude", "10.00", "95");
        lot(book, "C2", "crude", "8.00", "90");
        assertEquals(83.5, only(book).percent().value(), 1e-9);
        assertEquals(List.of("C1", "C2"), only(book).lots());
    }

    @Test
    void oneUpperBoundMakesTheSumAnUpperBound() {
        SmallBook book = lot("C1", "crude", "10.00", "95");
        lot(book, "C2", "crude", "8.00", "<90");
        assertTrue(only(book).basis().isUpperBound());
    }

    @Test
    void crudeWithoutAssayHasNoYield() {
        RunTally tally = lot("C1", "crude", "18.00", "").tally();
        assertTrue(tally.yields().isEmpty());
        assertTrue(tally.notComputed().stream().anyMatch(n -> n.what().equals("yield of P")));
    }

    @Test
    void cropsStandBesideTheCrudeAndAreNotAddedToIt() {
        // Crude 18.00 × 0.95 / 20 = 85.5 %; crops (12.00 + 2.00) / 20 = 70 %, no assay: an upper bound.
        SmallBook book = lot("C1", "crude", "18.00", "95");
        lot(book, "K1", "crop", "12.00", "");
        lot(book, "K2", "crop", "2.00", "");
        List<ProductYield> yields = book.tally().yields();
        assertEquals(
                List.of(Stage.WORKUP, Stage.PURIFIED),
                yields.stream().map(ProductYield::stage).toList());
        assertEquals(85.5, yields.get(0).percent().value(), 1e-9);
        assertEquals(70.0, yields.get(1).percent().value(), 1e-9);
        assertEquals(YieldBasis.ASSAY_NOT_RECORDED, yields.get(1).basis());
    }

    @Test
    void lastLotOfAChainOfPurificationsCounts() {
        // C1 → K1 → B1: the purified yield is that of B1 alone, 10.00 × 0.99 / 20 = 49.5 %.
        SmallBook book = lot("C1", "crude", "18.00", "95");
        lot(book, "K1", "crop", "12.00", "98").but("isolated", "From", "C1");
        lot(book, "B1", "purified", "10.00", "99").but("isolated", "From", "K1");
        ProductYield purified = book.tally().yields().get(1);
        assertEquals(List.of("B1"), purified.lots());
        assertEquals(49.5, purified.percent().value(), 1e-9);
    }

    @Test
    void purifiedLotWithoutOriginWasMadeFromTheCrop() {
        // P1 alone, 10.00 × 0.99 / 20 = 49.5 %; of another product it says nothing of the crop, 12.00 × 0.98 / 20 =
        // 58.8 %.
        SmallBook book = lot("C1", "crude", "18.00", "95");
        lot(book, "K1", "crop", "12.00", "98").but("isolated", "From", "C1");
        assertEquals(58.8, book.tally().yields().get(1).percent().value(), 1e-9);
        lot(book, "P1", "purified", "10.00", "99");
        assertEquals(List.of("P1"), book.tally().yields().get(1).lots());
        assertEquals(49.5, book.tally().yields().get(1).percent().value(), 1e-9);
    }

    @Test
    void conversionIsWhatWasRecoveredOffTheAmountCharged() {
        // 1.00 g of 100 g/mol recovered = 10 of 100 mmol: X = 0.90; 85.5 / 0.9 = 95 %.
        ProductYield yield = only(recovered("1.00"));
        assertEquals(95.0, yield.conversionAdjustedPercent().orElseThrow().value(), 1e-9);
        assertEquals(85.5, yield.percent().value(), 1e-9);
    }

    @Test
    void lowConversionGivesNoAdjustedYield() {
        // 8.10 g = 81 mmol: X = 0.19 < 0.2.
        assertTrue(only(recovered("8.10")).conversionAdjustedPercent().isEmpty());
    }

    @Test
    void substrateThatNobodyLookedForGivesNoConversion() {
        assertTrue(only(lot("C1", "crude", "18.00", "95"))
                .conversionAdjustedPercent()
                .isEmpty());
    }

    @Test
    void typedConversionIsUsed() {
        // 85.5 / 0.95 = 90 %.
        SmallBook book = lot("C1", "crude", "18.00", "95").but("runs", "Conversion", "95");
        assertEquals(90.0, only(book).conversionAdjustedPercent().orElseThrow().value(), 1e-9);
    }

    @Test
    void aliquotIsPutBackAsItsShareOfTheStreamItWasTakenFrom() {
        // When the aliquot was taken the stream held 0.9 g (aliquot) + 17.1 g (isolated) + 1.0 g (lost to A1 later) =
        // 19.0 g;
        // f = 0.9/19.0; 85.5 / (1 − 0.9/19.0) = 85.5 × 19.0 / 18.1 = 89.7514 %.
        assertEquals(
                89.7514,
                only(sampled("O1")).aliquotCorrectedPercent().orElseThrow().value(),
                1e-4);
    }

    @Test
    void aliquotOfALayerOffTheProductStreamIsNotPutBack() {
        assertTrue(only(sampled("A0")).aliquotCorrectedPercent().isEmpty());
    }

    @Test
    void yieldOfASeparationIsOfTheMassCharged() {
        ProductYield yield = only(SmallBook.empty()
                .but("runs", "Kind", "separation")
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200")
                .row("charges", "Material", "P", "Role", "component", "Molar mass", "200", "Actual amount", "4.00")
                .but("charges", "Actual unit", "g")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "3.60", "Assay", "100"));
        assertEquals(90.0, yield.percent().value(), 1e-9);
        assertEquals(PercentOf.CHARGED, yield.percentOf());
    }

    private static SmallBook sampled(String source) {
        return lot("C1", "crude", "18.00", "95")
                .but("isolated", "From", "O2")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A0")
                .row("workup", "Step", "2", "Operation", "sample", "From", source, "Gives other", "Q1")
                .row("workup", "Step", "3", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50.00", "Status", "kept")
                .row("layers", "Layer", "Q1", "Phase", "organic", "Volume", "5.0", "Net", "5.00", "Status", "used up")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "1.0", "Unit", "g")
                .row("assays", "Sample", "Q1", "Substance", "P", "Method", "HPLC", "Result", "0.9", "Unit", "g");
    }

    private static SmallBook recovered(String grams) {
        return lot("C1", "crude", "18.00", "95")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "S", "Method", "HPLC", "Result", grams, "Unit", "g");
    }

    private static SmallBook lot(String label, String stage, String grams, String assay) {
        return lot(SmallBook.reaction(), label, stage, grams, assay);
    }

    private static SmallBook lot(SmallBook book, String label, String stage, String grams, String assay) {
        return book.row("isolated", "Lot", label, "Product", "P", "Stage", stage, "Net", grams, "Assay", assay);
    }

    private static ProductYield only(SmallBook book) {
        List<ProductYield> yields = book.tally().yields();
        assertEquals(1, yields.size());
        return yields.get(0);
    }
}
