package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.totals.RunShare;
import workuptally.model.Book;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.ProductYield.Stage;

/** Theory 20.0 g; crude C1 of 18.00 g, purified B1 of 14.00 g. */
class HeadlineYieldsTest {
    @Test
    void yieldOfTheWorkupStandsFirst() {
        assertEquals(List.of(Stage.WORKUP), headlines(purified("95", "100").tally()));
    }

    @Test
    void bookMaySayThatThePurifiedOneDoes() {
        SmallBook book = purified("95", "100").limit("Yield reported", "purified");
        assertEquals(List.of(Stage.PURIFIED), headlines(book.tally()));
        assertEquals(List.of(70.0), inMeans(book));
    }

    @Test
    void crudeWithoutAssayLetsThePurifiedOneStandIn() {
        // 14.00 / 20.0 = 70 %, and it counts in the means.
        assertEquals(List.of(Stage.PURIFIED), headlines(purified("", "100").tally()));
        assertEquals(List.of(70.0), inMeans(purified("", "100")));
    }

    @Test
    void assayOfTheCrudeWinsOverAnUpperBoundOfThePurified() {
        SmallBook book = purified("95", "").limit("Yield reported", "purified");
        assertEquals(List.of(Stage.WORKUP), headlines(book.tally()));
        assertEquals(List.of(85.5), inMeans(book));
    }

    @Test
    void upperBoundAloneIsShownAndCountsInNoMean() {
        assertEquals(List.of(Stage.PURIFIED), headlines(purified("", "").tally()));
        assertTrue(inMeans(purified("", "")).isEmpty());
    }

    private static List<Stage> headlines(RunTally tally) {
        return tally.yields().stream()
                .filter(ProductYield::headline)
                .map(ProductYield::stage)
                .toList();
    }

    private static List<Double> inMeans(SmallBook book) {
        Book read = book.book();
        return RunShare.of(book.tally(), read.limits()).yieldPercents().stream()
                .map(p -> Math.round(p * 1e9) / 1e9)
                .toList();
    }

    private static SmallBook purified(String assayOfCrude, String assayOfPurified) {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00", "Assay", assayOfCrude)
                .row("isolated", "Lot", "B1", "Product", "P", "Stage", "purified", "From", "C1", "Net", "14.00")
                .but("isolated", "Assay", assayOfPurified);
    }
}
