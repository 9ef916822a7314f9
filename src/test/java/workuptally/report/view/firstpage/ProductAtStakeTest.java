package workuptally.report.view.firstpage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.DemoReview;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.measurements.NextTest;
import workuptally.report.view.lines.Recovery;
import workuptally.report.view.wording.ReadableNumbers;

/** What stands at stake on page one: of the substance that is asked for, each gram once, and not known where nobody looked. */
class ProductAtStakeTest {
    private static final ReadableNumbers NUMBERS = new ReadableNumbers('.');

    /** Three layers that nobody assayed, beside 17.6 g of 20.0 g. */
    private static SmallBook unassayed() {
        SmallBook book = SmallBook.reaction().first("products", "Character", "neutral");
        String from = "RM";
        for (int i = 1; i <= 3; i++) {
            book.row("workup", "Step", "" + i, "Operation", "wash", "From", from, "Material", "water", "Volume", "50")
                    .but("workup", "Gives organic", "O" + i)
                    .but("workup", "Gives aqueous", "A" + i)
                    .row("layers", "Layer", "A" + i, "Phase", "aqueous", "Volume", "50", "Net", "49.90")
                    .but("layers", "Status", "kept");
            from = "O" + i;
        }
        return book.row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O3", "Net", "17.60")
                .but("isolated", "Assay", "100")
                .but("isolated", "Relative standard uncertainty", "1");
    }

    @Test
    void sameMissingGramsStandAtStakeOnce() {
        Review review = unassayed().review();
        UrgentAction action = UrgentAction.of(review, NUMBERS, 9).stream()
                .filter(a -> a.text().contains("A1, A2, A3"))
                .findFirst()
                .orElseThrow();
        // theory 20.0 g less 17.6 g
        assertEquals(2.4, action.gramsAtStake().orElseThrow(), 0.01);
        LayerBoard board = LayerBoard.of(review).get(0);
        assertEquals(3, board.layers());
        assertTrue(board.mostGrams() < 3, board.toString());
    }

    @Test
    void whatNobodyAssayedIsNotNothing() {
        Review review = unassayed().review();
        String detail = TopFigure.of(review, NUMBERS).get(2).detail();
        assertTrue(detail.contains("layers not assayed"), detail);
        assertFalse(detail.contains("in layers 0"), detail);
        assertTrue(Recovery.of(review).get(0).isKeptUnknown());
    }

    /** 17.6 g of 20.0 g without an assay: the lot tells nothing yet, so the rest is not missing. */
    @Test
    void lotWithoutAssayLeavesTheRestNotKnownRatherThanNotFound() {
        Recovery open =
                Recovery.of(unassayed().but("isolated", "Assay", "").review()).get(0);
        assertEquals(0, open.notFoundPercent(), 1e-9);
        assertEquals(100, open.notKnownPercent(), 1e-9);
        Recovery assayed = Recovery.of(unassayed().review()).get(0);
        assertEquals(12, assayed.notFoundPercent(), 1e-9);
        assertEquals(0, assayed.notKnownPercent(), 1e-9);
    }

    /** A purified lot without assay can hold 17.6 g at most: what goes beyond that is not in it. */
    @Test
    void upperBoundOfALotIsNotDrawnAsIsolated() {
        Recovery run = Recovery.of(unassayed()
                        .but("isolated", "Assay", "")
                        .but("isolated", "Stage", "purified")
                        .review())
                .get(0);
        assertEquals(0, run.isolatedPercent(), 1e-9);
        assertEquals(88, run.atMostPercent(), 1e-9);
        assertEquals(88, run.notKnownPercent(), 1e-9);
        assertEquals(12, run.notFoundPercent(), 1e-9);
    }

    @Test
    void whatNothingBoundsIsNotKnown() {
        Review review = unassayed().but("isolated", "Assay", "").review();
        LayerBoard board = LayerBoard.of(review).stream()
                .filter(line -> line.outcome() != Outcome.EVIDENCE_COMPLETE)
                .findFirst()
                .orElseThrow();
        assertEquals("not known", board.most(NUMBERS));
    }

    /** The invented week asks R26-052 for the acid in A2, of which far more can be there than of the alcohol that was read. */
    @Test
    void measurementCarriesTheAmountOfWhatItLooksFor() throws Exception {
        Review week = DemoReview.review();
        RunReview run = week.runs().stream()
                .filter(r -> r.id().equals("R26-052"))
                .findFirst()
                .orElseThrow();
        NextTest test = run.nextTests().get(0);
        assertEquals(List.of("4-chlorobenzoic acid"), test.substances());
        double bound = run.tally().layer("A2").orElseThrow().contents().stream()
                .filter(c -> c.substance().equals("4-chlorobenzoic acid"))
                .findFirst()
                .orElseThrow()
                .upperBoundGrams()
                .orElseThrow();
        assertEquals(bound, test.releasesGrams(), 1e-9);
    }

    @Test
    void bookOfPlannedRunsHasNothingIsolatedYet() {
        Review review = SmallBook.reaction().first("runs", "Status", "planned").review();
        List<TopFigure> top = TopFigure.of(review, NUMBERS);
        assertTrue(
                top.get(2).detail().startsWith("nothing isolated yet"),
                top.get(2).detail());
        assertTrue(top.get(3).detail().contains("planned"), top.get(3).detail());
    }
}
