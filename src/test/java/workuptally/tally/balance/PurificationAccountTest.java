package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.FindingCode;

/** 20.00 g of crude at 95 % hold 19.00 g; conservation of mass, hand arithmetic on invented weighings. */
class PurificationAccountTest {
    private static SmallBook purified(String netOfP1, String resultOfLiquor) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "concentrate", "From", "RM", "Gives other", "C1")
                .row("workup", "Step", "2", "Operation", "crystallise", "From", "C1", "Material", "ethanol")
                .but("workup", "Volume", "50")
                .but("workup", "Gives other", "P1+ML1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "20.00", "Assay", "95")
                .but("isolated", "Relative standard uncertainty", "1")
                .row("isolated", "Lot", "P1", "Product", "P", "Stage", "purified", "From", "C1", "Net", netOfP1)
                .but("isolated", "Assay", "99.5")
                .but("isolated", "Relative standard uncertainty", "1")
                .row("layers", "Layer", "ML1", "Phase", "mother liquor", "Net", "45", "Status", "kept")
                .row("assays", "Sample", "ML1", "Substance", "P", "Method", "HPLC", "Result", resultOfLiquor)
                .but("assays", "Unit", "mg/g")
                .but("assays", "Relative standard uncertainty", "2");
    }

    private static Purification balance(SmallBook book) {
        List<Purification> all = book.tally().purifications();
        assertEquals(1, all.size());
        return all.get(0);
    }

    @Test
    void whatWasPurifiedIsInLotsAndLiquors() {
        // 16.00 g × 0.995 + 45 g × 66 mg/g = 15.92 + 2.97 = 18.89 g of 19.00 g.
        Purification purification = balance(purified("16.00", "66"));
        assertEquals(Set.of("C1"), purification.sources());
        assertEquals(19.00, purification.inGrams().value(), 1e-9);
        assertEquals(18.89, purification.foundGrams().value(), 1e-9);
        assertEquals(List.of("ML1"), purification.portions());
        assertTrue(purification.missingAtLeastPercent() < 0);
    }

    @Test
    void whatHasNoPlaceKeepsTheLiquor() {
        // 3.00 g × 0.995 + 0.45 g = 3.435 g of 19.00 g: 82 % is nowhere.
        SmallBook book = purified("3.00", "10");
        assertEquals(3.435, balance(book).foundGrams().value(), 1e-9);
        assertTrue(book.review().findings().stream().anyMatch(f -> f.code() == FindingCode.PURIFICATION_OPEN));
        LayerDecision liquor = book.reviewOfRun().decisions().stream()
                .filter(d -> d.layer().equals("ML1"))
                .findFirst()
                .orElseThrow();
        assertEquals(LayerDecision.Outcome.KEEP, liquor.outcome());
    }

    @Test
    void aLiquorThatNobodyAssayedMayHoldTheRest() {
        Purification purification = balance(purified("3.00", ""));
        assertTrue(purification.isOpen());
        assertEquals(List.of("ML1"), purification.unknown());
        assertTrue(purified("3.00", "").review().findings().stream()
                .noneMatch(f -> f.code() == FindingCode.PURIFICATION_OPEN));
    }

    /** Half of the crude taken, 10.00 g × 0.95 = 9.50 g; the part that is kept is no purified lot. */
    @Test
    void aStepMaySayHowMuchOfTheCrudeItTook() {
        SmallBook part = purified("8.00", "20")
                .but("workup", "Material", "")
                .but("workup", "Volume", "")
                .but("workup", "Mass", "10.00");
        assertEquals(9.50, balance(part).inGrams().value(), 1e-9);
        assertTrue(part.review().findings().stream()
                .noneMatch(f ->
                        f.code() == FindingCode.PURIFICATION_OPEN || f.code() == FindingCode.STEP_MATERIAL_UNKNOWN));
    }

    @Test
    void aCrudeWithoutContentHasNoBalance() {
        assertEquals(
                List.of(),
                purified("16.00", "66").first("isolated", "Assay", "").tally().purifications());
    }
}
