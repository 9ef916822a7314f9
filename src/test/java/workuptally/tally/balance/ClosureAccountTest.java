package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.report.view.wording.Wording;
import workuptally.tally.RunTally;
import workuptally.tally.balance.Closure.Verdict;

/** Closure on S, 100 mmol charged, of which the lot holds net/2 in mmol per 0.1 g: 19.00 g of P is 95 mmol. */
class ClosureAccountTest {
    @Test
    void closureIsUnitsFoundOverUnitsCharged() {
        // 18.00 g P = 90 mmol, and 0.50 g S in A1 = 5 mmol: 95 %.
        Closure closure = closure(recovered(lot("18.00", "1"), "0.50"));
        assertEquals(95.0, closure.percent().value(), 1e-9);
        assertEquals(5.0, closure.unaccountedPercent(), 1e-9);
        // 5 % of 100 mmol as P: 5 mmol × 200 g/mol = 1.0 g.
        assertEquals(1.0, closure.unaccountedGrams(), 1e-9);
        assertEquals("P", closure.unaccountedAs());
    }

    @Test
    void expandedUncertaintyIsTwiceTheStandardUncertainty() {
        // Lot: 1 % of assay and 0.02 g of 19.00 g = 0.105263 %; n₀: 0.2 % and 0.3 %. √(1 + 0.01108 + 0.04 + 0.09) =
        // 1.068214 %
        // of 95 % = 1.014803 %; U = 2.029606 %.
        Closure closure = closure(lot("19.00", "1"));
        assertEquals(2.029606, closure.expandedUncertaintyPercent(), 1e-5);
        // z = (100 − 95) / 1.014803 = 4.92707.
        assertEquals(4.92707, closure.z(), 1e-4);
    }

    @Test
    void coverageFactorOfTheBookIsUsed() {
        Closure closure = closure(lot("19.00", "1").limit("Coverage factor", "3"));
        assertEquals(3, closure.coverageFactor(), 1e-12);
        assertEquals(3.044409, closure.expandedUncertaintyPercent(), 1e-5);
    }

    @Test
    void withinUncertaintyItCloses() {
        // 99 ± 2.1 %.
        assertEquals(Verdict.CLOSES, closure(lot("19.80", "1")).verdict());
    }

    @Test
    void balanceThatClosesByHalfALimitAloneDoesNotClose() {
        SmallBook open = lot("19.40", "1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.0", "Status", "kept")
                .row(
                        "workup",
                        "Step",
                        "1",
                        "Operation",
                        "wash",
                        "From",
                        "RM",
                        "Gives organic",
                        "O1",
                        "Gives aqueous",
                        "A1")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "<0.01", "Unit", "g");
        // 97.0 ± 2.1 % with nothing to speak of in A1
        assertEquals(Verdict.OPEN, closure(open).verdict());
        // half of 0.60 g is 1.5 % of theory: 98.5 ± 2.7 %, of which nobody found the 1.5 %
        Closure coarse = closure(open.but("assays", "Result", "<0.60"));
        assertEquals(98.5, coarse.percent().value(), 0.01);
        assertEquals(Verdict.CANNOT_DECIDE, coarse.verdict());
        // and one that closes without it still does
        assertEquals(
                Verdict.CLOSES,
                closure(open.but("isolated", "Net", "19.80").but("assays", "Result", "<0.10"))
                        .verdict());
    }

    @Test
    void moreMissingThanTheUncertaintyIsOpen() {
        // 95 ± 2.0 %.
        Closure closure = closure(lot("19.00", "1")
                .row("workup", "Step", "1", "Operation", "concentrate", "From", "RM", "Gives other", "C1"));
        assertEquals(Verdict.OPEN, closure.verdict());
        assertFalse(closure.candidates().isEmpty());
    }

    @Test
    void gapOfARunWithoutARecordedWorkupDecidesNothing() {
        Closure closure = closure(lot("19.00", "1"));
        assertEquals(Verdict.CANNOT_DECIDE, closure.verdict());
        assertTrue(closure.candidates().get(0).evidence().startsWith("neither steps nor layers"));
    }

    @Test
    void moreFoundThanTheUncertaintyIsOver() {
        // 105 ± 2.2 %.
        Closure closure = closure(lot("21.00", "1"));
        assertEquals(Verdict.OVER, closure.verdict());
        assertTrue(closure.candidates().isEmpty());
    }

    @Test
    void widerThanTheLimitCannotDecide() {
        // 6 % of 95 %, twice: U about 11.4 %, above 10 %.
        assertEquals(Verdict.CANNOT_DECIDE, closure(lot("19.00", "6")).verdict());
    }

    @Test
    void balanceIsOpenWhereTheLayerThatNobodyAssayedMayHoldTheGap() {
        SmallBook book = lot("19.00", "1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept");
        Closure closure = closure(book);
        assertEquals(Verdict.OPEN, closure.verdict());
        assertEquals("layer A1", closure.candidates().get(0).place());
        assertEquals("assay A1", closure.candidates().get(0).settledBy());
    }

    @Test
    void balanceWithALayerThatNobodyAssayedDoesNotClose() {
        SmallBook book = lot("20.00", "1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept");
        assertEquals(Verdict.CANNOT_DECIDE, closure(book).verdict());
        assertEquals("not assayed: A1", Wording.POINT.of(closure(book).because()));
    }

    @Test
    void balanceThatIsTooCoarseDoesNotClose() {
        // 18.38 of 20.0 g at 4.7 %: 91.9 ± 8.7 % is compatible with 100 % and says nothing.
        Closure closure = closure(lot("18.38", "4.7"));
        assertEquals(91.9, closure.percent().value(), 1e-9);
        assertEquals(8.7, closure.expandedUncertaintyPercent(), 0.1);
        assertEquals(Verdict.CANNOT_DECIDE, closure.verdict());
        assertTrue(Wording.POINT
                .of(closure.because())
                .startsWith("too coarse, ± 8.7 % for a limit of ± 5.0 %, most of it from "));
    }

    @Test
    void purifiedLotWithoutAnAssayClosesNoBalance() {
        SmallBook book =
                SmallBook.reaction().row("isolated", "Lot", "C1", "Product", "P", "Stage", "purified", "Net", "20.00");
        assertEquals(Verdict.CANNOT_DECIDE, closure(book).verdict());
        assertEquals(
                "an upper bound, as is the content of C1",
                Wording.POINT.of(closure(book).because()));
    }

    @Test
    void readingsThatDoNotAgreeCloseNoBalance() {
        SmallBook book = lot("19.00", "1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "0.5", "Unit", "g")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "1.0", "Unit", "g");
        assertEquals(Verdict.CANNOT_DECIDE, closure(book).verdict());
        assertEquals(
                "readings do not agree in A1", Wording.POINT.of(closure(book).because()));
    }

    @Test
    void overIsSaidEvenWhereALayerIsNotAssayed() {
        SmallBook book = lot("21.00", "1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept");
        assertEquals(Verdict.OVER, closure(book).verdict());
    }

    @Test
    void amountChargedThatIsSharedByEveryTermDoesNotAverageOut() {
        // Two halves of 95 mmol have n₀ in common: 0.360555 % of 95 % = 0.342527 % comes from it alone, as with one
        // term.
        Closure one = closure(lot("19.00", "0.1"));
        Closure two = closure(lot("9.50", "0.1")
                .row("isolated", "Lot", "C2", "Product", "P", "Stage", "crude", "Net", "9.50", "Assay", "100")
                .but("isolated", "Relative standard uncertainty", "0.1"));
        // Beside it weighing, 0.02 g of 20 g = 0.1 % once and √2 × 0.1 % for two lots, and assays at 0.1 % of 95 % and
        // of
        // two halves.
        assertEquals(
                Math.sqrt(0.342527 * 0.342527 + 0.01 + 0.009025), one.percent().standardUncertainty(), 1e-5);
        assertEquals(
                Math.sqrt(0.342527 * 0.342527 + 0.02 + 2 * 0.0475 * 0.0475),
                two.percent().standardUncertainty(),
                1e-5);
    }

    @Test
    void dimerHoldsTwoUnits() {
        // 1.00 g of B (200 g/mol) = 5 mmol × 2 units = 10 mmol: 90 + 10 = 100 %.
        SmallBook book = lot("18.00", "1")
                .row("products", "Product", "B", "Wanted", "no", "Molar mass", "200", "Skeleton", "S 2")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "100.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "B", "Method", "HPLC", "Result", "1.00", "Unit", "g");
        assertEquals(100.0, closure(book).percent().value(), 1e-9);
    }

    @Test
    void lotWithoutAssayLeavesClosureUncomputed() {
        RunTally tally = lot("19.00", "1").but("isolated", "Assay", "").tally();
        assertTrue(tally.closures().isEmpty());
        assertTrue(tally.notComputed().stream()
                .anyMatch(n -> n.what().equals("closure on S") && n.because().equals("lot C1 has no assay")));
    }

    @Test
    void purifiedLotStandsInForACrudeThatNobodyAssayed() {
        // 18.00 g × 0.99 = 17.82 g P = 89.1 mmol of 100 mmol; where the other 10.9 % went, the purification may know.
        Closure closure = closure(purified("99"));
        assertEquals(89.1, closure.percent().value(), 1e-9);
        assertEquals("P1", closure.terms().get(0).place());
        assertEquals(Verdict.CANNOT_DECIDE, closure.verdict());
        assertEquals("purification of C1", closure.candidates().get(0).place());
        assertTrue(closure.candidates().get(0).settledBy().startsWith("assay C1"));
    }

    @Test
    void liquorsThatTheStepsGiveStandForAPurification() {
        // filtered straight out of acidified water: solid and filtrate have their rows, so that nothing of Q1 is left
        // out
        SmallBook book = lot("18.00", "1")
                .but("isolated", "Stage", "purified")
                .but("isolated", "From", "Q1")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives aqueous", "Q1")
                .row("workup", "Step", "2", "Operation", "filter", "From", "Q1", "Gives aqueous", "A1")
                .but("workup", "Gives other", "C1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50.00", "Status", "kept");
        assertTrue(closure(book).candidates().stream().noneMatch(c -> c.place().startsWith("purification")));
        assertTrue(closure(book.but("workup", "Gives other", "C1; L9")).candidates().stream()
                .anyMatch(c -> c.place().equals("purification of Q1")));
    }

    @Test
    void crudeWithoutARowIsKnownLessThanOneWithoutAnAssay() {
        SmallBook book = lot("18.00", "1").but("isolated", "Stage", "purified").but("isolated", "From", "C0");
        Closure closure = closure(book);
        assertEquals(Verdict.CANNOT_DECIDE, closure.verdict());
        assertEquals("purification of C0", closure.candidates().get(0).place());
        assertTrue(closure.candidates().get(0).settledBy().startsWith("enter and assay C0"));
    }

    @Test
    void liquorOfThePurificationCountsBesideThePurifiedLot() {
        // 2.00 g P in the liquor = 10 mmol: 89.1 + 10 = 99.1 %.
        SmallBook book = purified("99")
                .row("workup", "Step", "1", "Operation", "recrystallise", "From", "C1", "Gives other", "ML1")
                .row("layers", "Layer", "ML1", "Phase", "mother liquor", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "ML1", "Substance", "P", "Method", "HPLC", "Result", "2.00", "Unit", "g");
        assertEquals(99.1, closure(book).percent().value(), 1e-9);
        assertEquals(Verdict.CLOSES, closure(book).verdict());
    }

    @Test
    void assayOfTheCrudeLeavesThePurifiedLotOut() {
        SmallBook book = purified("99").first("isolated", "Assay", "90");
        // 21.00 g × 0.90 = 18.90 g = 94.5 mmol.
        assertEquals(94.5, closure(book).percent().value(), 1e-9);
        assertEquals(1, closure(book).terms().size());
    }

    @Test
    void purifiedLotWithoutAssayDoesNotStandIn() {
        assertTrue(purified("").tally().closures().isEmpty());
    }

    @Test
    void excessThatNobodyLookedForIsNoLoss() {
        // Of 110 mmol N theory uses 100: 9.1 % over; 96 mmol in P are 87.3 % of N, and say nothing of a loss.
        RunTally tally = excess().tally();
        Closure substrate = tally.closures().get(0);
        Closure reagent = tally.closures().get(1);
        assertEquals("N", reagent.skeleton());
        assertEquals(96.0 / 110 * 100, reagent.percent().value(), 1e-9);
        assertEquals(Verdict.OPEN, substrate.verdict());
        assertEquals(Verdict.CANNOT_DECIDE, reagent.verdict());
        assertEquals("N left over", reagent.candidates().get(0).place());
        assertEquals(
                "9.1 % of the charge is beyond theory, and no layer was assayed for it",
                reagent.candidates().get(0).evidence());
        assertEquals("assay A1 for N", reagent.candidates().get(0).settledBy());
        assertEquals(
                1,
                reagent.candidates().stream()
                        .filter(c -> c.settledBy().endsWith(" for N"))
                        .count());
    }

    @Test
    void excessThatWasLookedForLeavesAnOpenBalanceOpen() {
        SmallBook book = excess().row(
                        "assays", "Sample", "A1", "Substance", "N", "Method", "HPLC", "Result", "0.10", "Unit", "g");
        Closure reagent = book.tally().closures().get(1);
        // 0.10 g N = 1 mmol: 97/110 = 88.2 %.
        assertEquals(97.0 / 110 * 100, reagent.percent().value(), 1e-9);
        assertEquals(Verdict.OPEN, reagent.verdict());
    }

    /** Of 100 mmol S 40 mmol N use 40: of a substrate so much is more likely a wrong amount, unless N is a substrate, too. */
    @Test
    void excessOfASubstrateIsNotTakenForLeftOver() {
        assertTrue(leftOver("reagent", "4.00").isEmpty());
        assertEquals(1, leftOver("substrate", "4.00").size());
        assertEquals(1, leftOver("reagent", "5.50").size(), "less than half may be on purpose");
    }

    private static List<Closure.Candidate> leftOver(String role, String grams) {
        Closure substrate = closure(excess().but("charges", "Role", role)
                .but("charges", "Actual amount", grams)
                .but("isolated", "Net", "7.00"));
        assertEquals("S", substrate.skeleton());
        return substrate.candidates().stream()
                .filter(c -> c.place().equals("S left over"))
                .toList();
    }

    /** 21.00 g of a crude C1 without an assay, from which 18.00 g were purified. */
    private static SmallBook purified(String assay) {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "21.00")
                .row("isolated", "Lot", "P1", "Product", "P", "Stage", "purified", "From", "C1")
                .but("isolated", "Net", "18.00")
                .but("isolated", "Assay", assay)
                .but("isolated", "Relative standard uncertainty", "1");
    }

    /** 100 mmol S and 110 mmol N give P, of which the lot holds 96 mmol; A1 was assayed for P alone. */
    private static SmallBook excess() {
        return lot("19.20", "1")
                .first("products", "Skeleton", "S; N")
                .row("charges", "Material", "N", "Role", "reagent", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Actual amount", "11.00")
                .but("charges", "Actual unit", "g")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "0", "Unit", "g");
    }

    private static SmallBook lot(String grams, String relativeUncertainty) {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", grams, "Assay", "100")
                .but("isolated", "Relative standard uncertainty", relativeUncertainty);
    }

    private static SmallBook recovered(SmallBook book, String grams) {
        return book.row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "S", "Method", "HPLC", "Result", grams, "Unit", "g");
    }

    private static Closure closure(SmallBook book) {
        return book.tally().closures().get(0);
    }
}
