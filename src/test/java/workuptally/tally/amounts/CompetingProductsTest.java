package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.report.view.lines.Recovery;
import workuptally.tally.RunTally;

/** Two wanted products P and Q of 200 g/mol from 100 mmol S: theory of either 20.0 g. */
class CompetingProductsTest {
    private static SmallBook two(String skeletonOfQ) {
        return SmallBook.reaction()
                .but("products", "Skeleton", "S 1")
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .but("products", "Skeleton", skeletonOfQ)
                .row("charges", "Material", "T", "Role", "reagent", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Actual amount", "10.00")
                .but("charges", "Actual unit", "g")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "6.00", "Assay", "100")
                .but("isolated", "Relative standard uncertainty", "1")
                .row("isolated", "Lot", "C2", "Product", "Q", "Stage", "crude", "Net", "5.00", "Assay", "100")
                .but("isolated", "Relative standard uncertainty", "1");
    }

    private static List<Integer> sizes(SmallBook book) {
        RunTally tally = book.tally();
        return CompetingProducts.of(tally.run(), tally.amounts(), tally.theory().orElseThrow()).stream()
                .map(List::size)
                .toList();
    }

    @Test
    void isomersOfOneSubstrateCompeteAndFragmentsDoNot() {
        assertEquals(List.of(2), sizes(two("S 1")));
        // P takes all of S, Q all of T
        assertEquals(List.of(1, 1), sizes(two("T 1")));
    }

    @Test
    void recoveryOfIsomersIsTheSumOfTheirYields() {
        // 6.00/20.0 + 5.00/20.0 = 55 %, not 11.0 g of 40.0 g
        Review review = two("S 1").review();
        Recovery recovery = Recovery.of(review).get(0);
        assertEquals(20.0, recovery.theoryGrams(), 1e-9);
        assertEquals(55.0, recovery.isolatedPercent(), 1e-9);
        assertEquals(55.0, review.period().amountWeightedYieldPercent().orElseThrow(), 1e-9);
    }

    @Test
    void recoveryOfWhatDoesNotCompeteIsOfBothTheories() {
        // 11.0 g of 40.0 g
        Review review = two("T 1").review();
        assertEquals(27.5, Recovery.of(review).get(0).isolatedPercent(), 1e-9);
        assertEquals(27.5, review.period().amountWeightedYieldPercent().orElseThrow(), 1e-9);
    }
}
