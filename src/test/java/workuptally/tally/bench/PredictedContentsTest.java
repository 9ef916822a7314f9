package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.tally.amounts.Content;

/**
 * Theory 20.0 g of P in water, extracted twice with 100 mL ethyl acetate over 100 mL; P = 99 in ethyl acetate, known to a factor of 1.2. A1
 * was not assayed.
 */
class PredictedContentsTest {
    /**
     * D = 99 / 1.2 = 82.5; V = 100 × (1 + 1.645 × 0.012) = 101.974 mL for A1, 100 mL for Q1: left (101.974 / (101.974 + 8250)) × (100 /
     * (100 + 8250)) = 1.46226e-4 of 20.0 × (1 + 1.645 × 0.0036056) = 20.11862 g.
     */
    private static final double AT_MOST_GRAMS = 0.0029419;

    @Test
    void predictionIsShownAndDoesNotCount() {
        Content content = content(extracted());
        assertTrue(
                content.evidence()
                        .endsWith("; partition at the pH predicts at most 0.0030 g, which does not count here"),
                content.evidence());
        assertFalse(content.rests() == Content.Rests.PREDICTION);
    }

    @Test
    void laboratoryMayTakeItForEvidence() {
        Content content = content(counted());
        assertEquals(AT_MOST_GRAMS, content.upperBoundGrams().orElseThrow(), 2e-6);
        assertEquals(Content.Rests.PREDICTION, content.rests());
        assertEquals(Content.Kind.BOUND, content.kind());
        assertEquals(State.MET, state(counted(), "R3"));
        assertEquals(State.MET, state(counted(), "R4"));
        assertEquals(State.MET, state(counted(), "R6"));
    }

    @Test
    void withoutTheLimitTheLayerIsHeld() {
        assertFalse(state(extracted(), "R6") == State.MET);
    }

    @Test
    void acidNeedsAPlainPh() {
        SmallBook acid = counted().first("products", "Character", "acid").first("products", "pKa", "4.2");
        assertFalse(content(acid).rests() == Content.Rests.PREDICTION);
        assertEquals(
                Content.Rests.PREDICTION,
                content(acid.but("layers", "pH", "2.0")).rests());
    }

    @Test
    void coarserPhBoundsLess() {
        SmallBook acid = counted().first("products", "Character", "acid").first("products", "pKa", "4.2");
        double fine = content(acid.but("layers", "pH", "4.0")).upperBoundGrams().orElseThrow();
        double coarse = content(acid.but("layers", "pH", "4")).upperBoundGrams().orElseThrow();
        assertTrue(coarse > fine, coarse + " against " + fine);
    }

    @Test
    void earlierExtractionCountsOnlyWhereItsLayerWasMeasured() {
        // Without Q1 all of theory may have reached step 2: 101.974 / 8351.974 × 20.11862 g.
        SmallBook book = extracted().first("layers", "Volume", "").limit("Prediction counts", "yes");
        assertEquals(0.245640, content(book).upperBoundGrams().orElseThrow(), 2e-5);
    }

    @Test
    void solventThatMixesWithWaterLeavesNothingToPredictBy() {
        SmallBook mixed = counted()
                .row("charges", "Material", "methanol", "Role", "solvent", "Actual amount", "60", "Actual unit", "mL");
        assertFalse(content(mixed).rests() == Content.Rests.PREDICTION);
    }

    @Test
    void pHOfABaseIsTakenAtItsLowerEnd() {
        // pKa 9, pH 9.0 ± 0.1: at 8.9 one part in 1 + 10^0.1 = 2.25893 is neutral, D = 82.5/2.25893 = 36.522, and
        // 101.974 / (101.974 + 3652.2) of 20.11862 g stay; the extraction before is no help to an acid or base
        SmallBook base = counted().first("products", "Character", "base").first("products", "pKa", "9");
        assertEquals(
                0.54648,
                content(base.but("layers", "pH", "9.0")).upperBoundGrams().orElseThrow(),
                2e-5);
        // half a unit where the pH has no decimal: 1 + 10^0.5 = 4.16228
        assertEquals(
                20.11862 * 101.974 / (101.974 + 8250 / 4.16228),
                content(base.but("layers", "pH", "9")).upperBoundGrams().orElseThrow(),
                2e-5);
    }

    @Test
    void pHOfAnAcidIsTakenAtItsUpperEnd() {
        // pKa 4.2, pH 4.2 ± 0.1: at 4.3 one part in 1 + 10^0.1 = 2.25893 is neutral
        SmallBook acid = counted().first("products", "Character", "acid").first("products", "pKa", "4.2");
        assertEquals(
                20.11862 * 101.974 / (101.974 + 8250 / 2.25893),
                content(acid.but("layers", "pH", "4.2")).upperBoundGrams().orElseThrow(),
                2e-5);
        assertFalse(content(acid.but("layers", "pH", "<4.2")).rests() == Content.Rests.PREDICTION);
    }

    @Test
    void octanolStandsInWithATenfoldReach() {
        // P = 10^3 over 10 is D = 100: 101.974 / (101.974 + 10000) × 100 / (100 + 10000) of 20.11862 g
        SmallBook book = counted().first("products", "Partition ratio", "").first("products", "Log P", "3");
        assertEquals(
                20.11862 * 101.974 / 10101.974 * 100 / 10100,
                content(book).upperBoundGrams().orElseThrow(),
                2e-6);
    }

    @Test
    void whatIsNotKnownInWaterIsNotPredicted() {
        assertFalse(content(counted().first("products", "Partition ratio", "")).rests() == Content.Rests.PREDICTION);
    }

    @Test
    void productIsHeldAgainstItsOwnTheoryWhereTheRunHasTwo() {
        // Q: 100 mmol of 150 g/mol, 15.0 g, with a ratio of its own, 9: D = 7.5
        SmallBook book = counted()
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150", "Coefficient", "1")
                .but("products", "Partition ratio", "9")
                .but("products", "Partition solvent", "ethyl acetate");
        Content other = book.tally().layer("A1").orElseThrow().contents().stream()
                .filter(c -> c.substance().equals("Q"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                15.0 * 20.11862 / 20 * 101.974 / (101.974 + 750) * 100 / 850,
                other.upperBoundGrams().orElseThrow(),
                1e-4);
    }

    @Test
    void onlyALayerThatNobodyLookedAtIsPredicted() {
        SmallBook looked = counted()
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "<0.5", "Unit", "g");
        Content content = content(looked);
        assertFalse(content.evidence().contains("partition"), content.evidence());
        assertEquals(0.5, content.upperBoundGrams().orElseThrow(), 0.1);
    }

    @Test
    void predictionNeedsNoBalanceBesideIt() {
        Content content = content(counted().but("isolated", "Net", ""));
        assertEquals(AT_MOST_GRAMS, content.upperBoundGrams().orElseThrow(), 2e-6);
        assertEquals(Content.Rests.PREDICTION, content.rests());
    }

    @Test
    void organicLayerIsNotPredicted() {
        SmallBook book = counted()
                .row(
                        "workup",
                        "Step",
                        "2.5",
                        "Operation",
                        "extract",
                        "From",
                        "O2",
                        "Material",
                        "hexane",
                        "Volume",
                        "10")
                .but("workup", "Gives organic", "O9")
                .row("layers", "Layer", "O9", "Phase", "organic", "Volume", "100", "Net", "90.0", "Status", "kept");
        assertTrue(book.tally().layer("O9").orElseThrow().contents().stream()
                .noneMatch(c -> c.evidence().contains("partition")));
    }

    private static Content content(SmallBook book) {
        return book.tally().layer("A1").orElseThrow().contents().stream()
                .filter(c -> c.substance().equals("P"))
                .findFirst()
                .orElseThrow();
    }

    private static State state(SmallBook book, String condition) {
        LayerDecision decision = book.reviewOfRun().decision("A1").orElseThrow();
        return decision.conditions().stream()
                .filter(c -> c.id().equals(condition))
                .findFirst()
                .orElseThrow()
                .state();
    }

    private static SmallBook counted() {
        return extracted().limit("Prediction counts", "yes");
    }

    private static SmallBook extracted() {
        return SmallBook.reaction()
                .first("products", "Partition ratio", "99")
                .first("products", "Partition solvent", "ethyl acetate")
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "Q1")
                .row("workup", "Step", "2", "Operation", "extract", "From", "Q1", "Material", "ethyl acetate")
                .but("workup", "Volume", "100")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "3", "Operation", "combine", "From", "O1+O2", "Gives organic", "O3")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O3", "Net", "19.20")
                .but("isolated", "Assay", "100")
                .but("isolated", "Relative standard uncertainty", "1")
                .row("layers", "Layer", "Q1", "Phase", "aqueous", "Volume", "100", "Status", "consumed")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", "100.0", "Status", "kept");
    }
}
