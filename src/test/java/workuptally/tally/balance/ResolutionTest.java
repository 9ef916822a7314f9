package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.tally.balance.Closure.Candidate;

/**
 * 10.00 g (100 mmol) of the racemate S, of which P is one half: theory 5.00 g. Lot C1 holds 4.50 g and A1 0.20 g of it by assay, A2 was not
 * assayed; 53 % of the racemate is not found.
 */
class ResolutionTest {
    @Test
    void otherEnantiomerIsWhereMostOfItIs() {
        Candidate other = closure(resolved()).candidates().get(0);
        assertEquals("the other enantiomer", other.place());
        // Half of the racemate, 5.00 g, and 1.645·u: 0.3606 % of it by weighing and assay of the charge, 0.0297 g.
        assertEquals(5.00 + 0.02966, other.highGrams(), 1e-4);
    }

    @Test
    void layerCanHoldNoMoreOfTheWantedOneThanItsTheoryLeaves() {
        // 5.00 − 4.50 − 0.20 = 0.30 g and 1.645·u, u: charge 0.018028 g, C1 √(0.02² + 0.045²), A1 2 % of 0.20 g =
        // 0.004 g, 0.052552 g in all: 0.3865 g.
        Candidate layer = closure(resolved()).candidates().stream()
                .filter(c -> c.place().equals("layer A2"))
                .findFirst()
                .orElseThrow();
        assertEquals(0.3865, layer.highGrams(), 2e-3);
    }

    @Test
    void layerWithItsOwnAssayIsNotHeldByTheOtherHalf() {
        SmallBook book = resolved()
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "0.02", "Unit", "g");
        LayerDecision decision = book.reviewOfRun().decision("A2").orElseThrow();
        assertEquals(
                State.MET,
                decision.conditions().stream()
                        .filter(c -> c.id().equals("R6"))
                        .findFirst()
                        .orElseThrow()
                        .state());
    }

    @Test
    void trackedEnantiomerGivesItsNameAndWhatWasFoundOfIt() {
        // 5.00 g less 4.00 g of M in the liquor A1 leaves about 1.0 g.
        SmallBook book = resolved()
                .row("products", "Product", "M", "Wanted", "no", "Molar mass", "100")
                .row("assays", "Sample", "A1", "Substance", "M", "Method", "HPLC", "Result", "4.00", "Unit", "g");
        Candidate other = closure(book).candidates().get(0);
        assertEquals("M", other.place());
        assertEquals(1.0, other.highGrams(), 0.15);
        assertEquals("assay the liquors and layers for M", other.settledBy());
    }

    @Test
    void reactionHasNoOtherEnantiomer() {
        Optional<Candidate> other = closure(resolved().first("runs", "Kind", "reaction")).candidates().stream()
                .filter(c -> c.place().contains("enantiomer"))
                .findFirst();
        assertTrue(other.isEmpty());
    }

    private static Closure closure(SmallBook book) {
        return book.tally().closures().get(0);
    }

    private static SmallBook resolved() {
        return SmallBook.reaction()
                .first("runs", "Kind", "resolution")
                .first("products", "Molar mass", "100")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O2", "Net", "4.50")
                .but("isolated", "Assay", "100")
                .but("isolated", "Relative standard uncertainty", "1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50.00", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "50", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "0.20", "Unit", "g");
    }
}
