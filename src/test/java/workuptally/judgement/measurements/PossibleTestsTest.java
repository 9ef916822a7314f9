package workuptally.judgement.measurements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.measurements.NextTest.Kind;

/**
 * Which test the planner proposes for one open layer of an invented run, theory 20.0 g of P, so that 2 % are 0.40 g: beside each book in which
 * a test is the best one stands one in which it is not.
 */
class PossibleTestsTest {

    /** A1 off the mixture is assayed and holds nothing; A2, 100 mL, is the second wash, with this in it, and was not. */
    private static SmallBook washed(String second) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "100")
                .but("workup", "Checked by", "water drop")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", second, "Volume", "100")
                .but("workup", "Checked by", "water drop")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("workup", "Step", "3", "Operation", "concentrate", "From", "O2", "Gives other", "CR1")
                .row("charges", "Material", "MTBE", "Role", "solvent", "Actual amount", "100", "Actual unit", "mL")
                .row("isolated", "Lot", "CR1", "Product", "P", "Stage", "crude", "From", "O2", "Net", "16.00")
                .but("isolated", "Assay", "98")
                .but("isolated", "Identity by", "NMR")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "<0.10", "Unit", "mg/mL")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Status", "kept", "Volume", "100")
                .but("layers", "Vessel", "E-1")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Status", "kept", "Volume", "100")
                .but("layers", "Vessel", "E-2");
    }

    private static List<NextTest> next(SmallBook book) {
        return book.reviewOfRun().nextTests();
    }

    @Test
    void plainWaterIsDriedAndWeighed() {
        NextTest first = next(washed("water")).get(0);
        assertEquals(Kind.DRY_RESIDUE, first.kind());
        assertEquals(List.of("A2"), first.samples());
        assertEquals(List.of("A2"), first.settles());
        // 2 % of 20.0 g in 100 mL less the guard, and what A1 may hold of the 2 % of the run
        assertEquals(3.7, first.mustBeBelow().orElseThrow(), 0.2);
        assertEquals("mg/mL", first.unit());
        assertTrue(first.kind().cost() < Kind.ASSAY.cost());
    }

    @Test
    void aWashWithSaltInItIsAssayed() {
        NextTest first = next(washed("sat. NaHCO3")).get(0);
        assertEquals(Kind.ASSAY, first.kind());
        assertEquals(List.of("A2"), first.samples());
    }

    @Test
    void aVolatileProductIsNotDried() {
        NextTest first =
                next(washed("water").first("products", "Boiling point", "80")).get(0);
        assertEquals(Kind.ASSAY, first.kind());
    }

    @Test
    void aResidueBelowTheLimitSettlesTheLayerAndOneAboveItIsFollowedByAnAssay() {
        RunReview low = residue("5.0").reviewOfRun();
        assertEquals(
                LayerDecision.Outcome.EVIDENCE_COMPLETE, decision(low, "A2").outcome());
        RunReview high = residue("60.0").reviewOfRun();
        assertFalse(decision(high, "A2").outcome() == LayerDecision.Outcome.EVIDENCE_COMPLETE);
        assertEquals(Kind.ASSAY, high.nextTests().get(0).kind());
        // the assay tells the product among what stayed behind
        RunReview assayed = residue("60.0")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "0.50", "Unit", "mg/mL")
                .reviewOfRun();
        assertEquals(
                LayerDecision.Outcome.EVIDENCE_COMPLETE, decision(assayed, "A2").outcome());
        // 12.0 mg/mL of everything cannot be less than 20.0 mg/mL of one thing
        RunReview disputed = residue("60.0")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "20.0", "Unit", "mg/mL")
                .reviewOfRun();
        assertFalse(decision(disputed, "A2").outcome() == LayerDecision.Outcome.EVIDENCE_COMPLETE);
    }

    private static SmallBook residue(String milligrams) {
        return washed("water")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "dry residue", "Aliquot", "5.0")
                .but("assays", "Residue", milligrams);
    }

    private static LayerDecision decision(RunReview review, String label) {
        return review.decisions().stream()
                .filter(d -> d.layer().equals(label))
                .findFirst()
                .orElseThrow();
    }

    /** A2 was weighed without its tare and assayed by mass, or not assayed. */
    private static SmallBook weighed(boolean assayed) {
        SmallBook book = washed("sat. NaHCO3").but("layers", "Volume", "").but("layers", "Gross", "170.00");
        return assayed
                ? book.row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "0.05")
                        .but("assays", "Unit", "% w/w")
                : book;
    }

    @Test
    void theTareIsAskedForWhereAnAssayByMassWaitsForIt() {
        NextTest first = next(weighed(true)).get(0);
        assertEquals(Kind.TARE, first.kind());
        assertEquals(List.of("A2"), first.settles());
        RunReview then = weighed(true).but("layers", "Tare", "65.00").reviewOfRun();
        assertEquals(List.of(), then.nextTests());
    }

    @Test
    void theTareAloneTellsNothingOfALayerWithoutAnAssay() {
        assertTrue(next(weighed(false)).stream().noneMatch(t -> t.kind() == Kind.TARE));
    }

    @Test
    void oneAssayOfBothWhereTheyMayMeetAndOneEachWhereNot() {
        SmallBook both = washed("brine").first("assays", "Sample", "CR1").first("assays", "Substance", "S");
        assertEquals(Kind.COMPOSITE, next(both).get(0).kind());
        for (String[] apart : new String[][] {
            {"sat. NH4Cl", "bleach 5 wt%"},
            {"10 wt% urea", "bleach 5 wt%"},
            {"10 wt% glycerol", "5 wt% KMnO4"},
            {"10 wt% NaBH4", "1 M HCl"},
            {"10 wt% NaN3", "sat. NH4Cl"},
            {"2 M NaOH", "sat. NH4Cl"}
        }) {
            SmallBook book = washed(apart[1])
                    .first("workup", "Material", apart[0])
                    .first("assays", "Sample", "CR1")
                    .first("assays", "Substance", "S");
            assertTrue(next(book).stream().noneMatch(t -> t.kind() == Kind.COMPOSITE), apart[0] + " on " + apart[1]);
        }
        SmallBook acid = washed("sat. NaHCO3")
                .first("workup", "pH after", "1.0")
                .first("assays", "Sample", "CR1")
                .first("assays", "Substance", "S");
        assertTrue(next(acid.but("layers", "pH", "8.2")).stream().noneMatch(t -> t.kind() == Kind.COMPOSITE));
    }
}
