package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.report.view.wording.Wording;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.YieldBasis;

/** 100 mmol S give the isomers P and Q, 200 g/mol each, so that the theory of either is 20.0 g; both stand in lot C1 of 19.00 g. */
class SeveralProductsInOneLotTest {
    @Test
    void eachProductHasAYieldByItsOwnAssay() {
        // 19.00 × 0.70 / 20.0 = 66.5 %; 19.00 × 0.25 / 20.0 = 23.75 %.
        RunTally tally = isomers("70", "25").tally();
        assertEquals(66.5, percent(tally, "P"), 1e-9);
        assertEquals(23.75, percent(tally, "Q"), 1e-9);
    }

    @Test
    void rowOfTheSecondProductMayRepeatTheWeighing() {
        assertEquals(
                23.75,
                percent(isomers("70", "25").but("isolated", "Net", "19.00").tally(), "Q"),
                1e-9);
    }

    @Test
    void balanceAddsThemAndKnowsThatTheyWereWeighedTogether() {
        // 66.5 + 23.75 = 90.25 %. u: the one weighing 0.02 g × 0.95 / 20.0 g = 0.095 %, assays 1 % of 66.5 and of
        // 23.75, the amount
        // charged √(0.02² + 0.03²)/10 = 0.3606 % of 90.25 %: √(0.095² + 0.665² + 0.2375² + 0.3254²) = 0.78329 %.
        Closure closure = isomers("70", "25").tally().closures().get(0);
        assertEquals(90.25, closure.percent().value(), 1e-9);
        assertEquals(0.78329, closure.percent().standardUncertainty(), 1e-5);
    }

    @Test
    void massCountsOnce() {
        long lots = isomers("70", "25")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.00")
                .tally()
                .massBalance()
                .orElseThrow()
                .lines()
                .stream()
                .filter(l -> l.label().equals("C1"))
                .count();
        assertEquals(1, lots);
    }

    @Test
    void restOfTheLotIsWhatItWeighsBeyondBoth() {
        // Unreacted S can be in C1 for what it weighs beyond P and Q: 19.00 × 0.01 = 0.19 g and 1.645·u, with
        // u = √((0.01 × 0.02)² + (19 × 0.0075)² + (19 × 0.0024)²) = 0.149618 g: 0.436121 g of S, twice that as P.
        double high = isomers("75", "24").tally().closures().get(0).candidates().stream()
                .filter(c -> c.place().equals("unreacted S"))
                .findFirst()
                .orElseThrow()
                .highGrams();
        assertEquals(2 * 0.436121, high, 1e-5);
    }

    @Test
    void netOverTheoryIsNotSaidOfALotOfSeveral() {
        assertTrue(isomers("70", "25").tally().lots().stream()
                .map(LotTally::overTheoryPercent)
                .allMatch(o -> o.isEmpty()));
    }

    @Test
    void massOfAPurifiedLotStandsForNoneOfSeveralWithoutAssay() {
        RunTally tally =
                isomers("70", "").first("isolated", "Stage", "purified").tally();
        assertEquals(YieldBasis.NONE, tally.lots().get(1).basis());
        assertTrue(tally.lots().get(1).pureGrams().isEmpty());
    }

    @Test
    void moleRatioOfTheSecondProductIsToTheFirst() {
        // 1 P : 0.25 Q of equal molar mass: P at most 80 %, Q at most 20 % w/w.
        SmallBook book = isomers("", "")
                .row("assays", "Sample", "C1", "Substance", "Q", "Method", "NMR", "Result", "0.25")
                .but("assays", "Unit", "mol ratio to product");
        RunTally tally = book.tally();
        assertEquals(0.8, tally.lots().get(0).productFraction().orElseThrow().value(), 1e-9);
        assertEquals(0.2, tally.lots().get(1).productFraction().orElseThrow().value(), 1e-9);
        assertEquals(YieldBasis.MOLE_RATIO_UPPER_BOUND, tally.lots().get(1).basis());
    }

    @Test
    void anotherWeighingIsNoRowOfTheSameLot() {
        SmallBook book = isomers("70", "25").but("isolated", "Net", "4.75");
        Finding finding = book.book().findings().stream()
                .filter(f -> f.code().word().equals("lot-rows-differ"))
                .findFirst()
                .orElseThrow();
        assertEquals("read lot 'C1' for Q with another Net than in row 2 for P", Wording.POINT.of(finding.seen()));
        assertEquals(1, book.run().lots().size());
    }

    @Test
    void oneProductTwiceIsStillADuplicate() {
        SmallBook book = isomers("70", "25").but("isolated", "Product", "P");
        assertTrue(book.book().findings().stream().anyMatch(f -> f.code().word().equals("lot-duplicate")));
        assertEquals(1, book.run().lots().size());
    }

    @Test
    void nothingIsSaidTwiceOrTakenForCopied() {
        SmallBook book = isomers("70", "25")
                .first("isolated", "Net", "")
                .first("isolated", "Gross", "119.00")
                .first("isolated", "Tare", "100.00")
                .first("isolated", "Second weighing", "118.00");
        assertTrue(
                book.review().findings().stream().noneMatch(f -> f.code().word().startsWith("copied")));
        assertEquals(
                1,
                book.review().findings().stream()
                        .filter(f -> f.code().word().startsWith("not-at-constant-mass"))
                        .count());
    }

    @Test
    void assaysOfTheProductsAreAddedUpForTheWhole() {
        assertTrue(isomers("70", "45").review().findings().stream()
                .anyMatch(f -> f.code().word().startsWith("assay-sum-impossible")));
    }

    private static double percent(RunTally tally, String product) {
        return tally.yields().stream()
                .filter(y -> y.product().name().equals(product))
                .findFirst()
                .map(ProductYield::percent)
                .orElseThrow()
                .value();
    }

    private static SmallBook isomers(String assayOfP, String assayOfQ) {
        return SmallBook.reaction()
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "19.00", "Assay", assayOfP)
                .but("isolated", "Relative standard uncertainty", "1")
                .row("isolated", "Lot", "C1", "Product", "Q", "Assay", assayOfQ)
                .but("isolated", "Relative standard uncertainty", "1");
    }
}
