package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Wording;

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

    private static LayerDecision.Outcome outcome(SmallBook book, String layer) {
        return book.reviewOfRun().decisions().stream()
                .filter(d -> d.layer().equals(layer))
                .findFirst()
                .orElseThrow()
                .outcome();
    }

    private static List<String> gains(SmallBook book) {
        return book.review().findings().stream()
                .filter(f -> f.code() == FindingCode.PURIFIED_EXCEEDS_SOURCE)
                .map(f -> f.place().inWords() + ": " + Wording.POINT.of(f.seen()))
                .toList();
    }

    /** A crude washed before, so that a layer of the workup stands behind its balance as well. */
    private static SmallBook washed(String netOfP1, String resultOfLiquor) {
        return purified(netOfP1, resultOfLiquor)
                .first("workup", "From", "O1")
                .row("workup", "Step", "0.5", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .but("workup", "Lower layer", "aqueous")
                .but("workup", "Checked by", "water drop")
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Actual amount", "100")
                .but("charges", "Actual unit", "mL")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Position", "lower", "Volume", "50", "Net", "50")
                .but("layers", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "0.10", "Unit", "mg/mL");
    }

    /** 18.80 g × 0.995 + 45 g × 5.6 mg/g = 18.96 g of 19.00 g: within U. With 45 g × 40 mg/g it is 20.51 g, 8 % more than there was. */
    @Test
    void liquorsAddToWhatTheLotsHold() {
        assertEquals(List.of(), gains(washed("18.80", "5.6")));
        List<String> said = gains(washed("18.80", "40"));
        assertEquals(1, said.size(), said::toString);
        assertTrue(said.get(0).contains(", Net: P1, ML1 hold together 20.51 g of P"), said.get(0));
        assertTrue(said.get(0).contains("C1, of which they were made, held 19.00 g"), said.get(0));
    }

    /** Too much came of the crude: neither its liquor nor the layer that its content vouches for is settled, though both hold little. */
    @Test
    void evidenceWaitsWhereMoreWasFoundThanThereWas() {
        // 18.80 g × 0.995 + 0.25 g = 18.96 g of 19.00 g
        SmallBook sound = washed("18.80", "5.6");
        assertEquals(LayerDecision.Outcome.EVIDENCE_COMPLETE, outcome(sound, "A1"));
        // 19.95 g × 0.995 = 19.85 g, + 0.25 g: 20.10 g
        SmallBook gains = washed("19.95", "5.6");
        assertEquals(LayerDecision.Outcome.KEEP, outcome(gains, "A1"));
        assertEquals(LayerDecision.Outcome.KEEP, outcome(gains, "ML1"));
    }

    /** 19.50 g as weighed are more than 19.00 g by assay; but wet crystals say nothing against the crude. */
    @Test
    void aLotWithoutAnAssayIsToldOfAndHoldsNoLayer() {
        SmallBook wet = washed("19.50", "5.6").but("isolated", "Assay", "").but("isolated", "Identity by", "1H NMR");
        assertEquals(1, gains(wet).size());
        assertTrue(gains(wet).get(0).contains("P1 weighs 19.50 g"), gains(wet).toString());
        assertEquals(LayerDecision.Outcome.EVIDENCE_COMPLETE, outcome(wet, "A1"));
    }

    /** 10.00 g on the column hold 9.50 g; 500 mL of eluent weigh more than that by far, and 0.9 g/mL of it are no load. */
    @Test
    void aColumnMaySayItBesideItsEluent() {
        SmallBook column = purified("8.00", "20")
                .but("workup", "Operation", "column")
                .but("workup", "Material", "ethyl acetate")
                .but("workup", "Volume", "500")
                .but("workup", "Mass", "10.00");
        assertEquals(9.50, balance(column).inGrams().value(), 1e-9);
        double eluent = column.tally().solvents().get(0).purification().inGrams();
        assertEquals(450, eluent, 5);
        assertTrue(column.review().findings().stream().noneMatch(f -> f.code() == FindingCode.MASS_VOLUME_DENSITY));
        assertEquals(
                19.00, balance(column.but("workup", "Mass", "450")).inGrams().value(), 1e-9);
        assertEquals(
                19.00,
                balance(column.but("workup", "Operation", "crystallise").but("workup", "Mass", "10.00"))
                        .inGrams()
                        .value(),
                1e-9);
    }

    @Test
    void aCrudeWithoutContentHeldItsMassAtMost() {
        SmallBook book = purified("16.00", "66").first("isolated", "Assay", "");
        assertEquals(20.00, balance(book).inGrams().value(), 1e-9);
        assertTrue(balance(book).inIsAtMost() && balance(book).isOpen());
        assertTrue(book.review().findings().stream().noneMatch(f -> f.code() == FindingCode.PURIFICATION_OPEN));
        assertEquals(List.of(), gains(book));
    }

    /** All of the crude weighed 20.00 g; 18.80 g × 0.995 + 45 g × 70 mg/g = 21.86 g. */
    @Test
    void moreThanAllOfACrudeWithoutAnAssayIsTooMuch() {
        List<String> said = gains(purified("18.80", "70").first("isolated", "Assay", ""));
        assertEquals(1, said.size(), said::toString);
        assertTrue(said.get(0).contains("C1, of which they were made, weighed 20.00 g"), said.get(0));
    }

    /** A lot weighs more than what it was made from only where it took something up, which its assay then shows. */
    @Test
    void aPurifiedLotIsNotHeavierThanItsCrude() {
        SmallBook both = purified("20.40", "").first("isolated", "Assay", "").but("isolated", "Assay", "");
        assertTrue(
                gains(both).get(0).contains("P1 weighs 20.40 g of P, but C1, of which it was made, weighed 20.00 g"));
        SmallBook assayed = purified("20.40", "").first("isolated", "Assay", "");
        assertEquals(1, gains(assayed).size(), "99.5 ± 2 % of 20.40 g");
        SmallBook lighter = purified("19.90", "").first("isolated", "Assay", "").but("isolated", "Assay", "");
        assertEquals(List.of(), gains(lighter));
        SmallBook wetBelow =
                purified("20.40", "").first("isolated", "Assay", "").but("isolated", "Assay", "85");
        assertEquals(List.of(), gains(wetBelow), "17.34 g of product in 20.40 g");
    }

    private static List<String> open(SmallBook book) {
        return book.review().findings().stream()
                .filter(f -> f.code() == FindingCode.PURIFICATION_OPEN)
                .map(f -> Wording.POINT.of(f.seen()))
                .toList();
    }

    /** Of 19.00 g the lot holds 9.95 g and the liquor 0.45 g: 8.60 g, 45 %, may be on 150 g of silica, not in 2 g of residue. */
    @Test
    void aPortionThatNobodyAssayedHoldsWhatItWeighsAtMost() {
        SmallBook silica = purified("10.00", "10")
                .but("workup", "Gives other", "P1+ML1+X1")
                .row("layers", "Layer", "X1", "Phase", "solid", "Net", "150", "Status", "kept");
        assertEquals(List.of("X1"), balance(silica).unknown());
        assertEquals(1, open(silica).size());
        assertTrue(
                open(silica).get(0).endsWith("8.60 g (45 %) may be in X1, which nobody assayed"),
                open(silica).get(0));
        SmallBook residue = silica.but("layers", "Net", "2.0");
        assertTrue(
                open(residue).get(0).endsWith("(45 %) has no place, as X1 cannot hold so much"),
                open(residue).get(0));
        assertEquals(LayerDecision.Outcome.KEEP, outcome(residue, "ML1"));
    }

    /** 18.80 g × 0.995 + 0.25 g = 18.96 g of 19.00 g: nothing to look for in the silica. */
    @Test
    void whereNothingLacksNobodyIsAskedForTheSilica() {
        SmallBook silica = purified("18.80", "5.6")
                .but("workup", "Gives other", "P1+ML1+X1")
                .row("layers", "Layer", "X1", "Phase", "solid", "Net", "150", "Status", "kept");
        assertEquals(List.of(), open(silica));
    }

    /** What was taken off a fraction is no place of a product that does not boil. */
    @Test
    void solventTakenOffIsNoPlace() {
        SmallBook taken = purified("10.00", "10")
                .but("workup", "Gives other", "F1+ML1")
                .row("workup", "Step", "3", "Operation", "concentrate", "From", "F1", "Gives other", "P1+D1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "40", "Status", "kept");
        assertTrue(
                open(taken).get(0).endsWith("(45 %) has no place"), open(taken).get(0));
    }

    /** By its boiling point: what boils at 380 °C did not go over with the solvent, what boils at 130 °C may have. */
    @ParameterizedTest
    @CsvSource({"380, (45 %) has no place", "130, '(45 %) may be in D1, which nobody assayed'"})
    void solventTakenOffHoldsAVolatileProductOnly(String boils, String said) {
        SmallBook taken = purified("10.00", "10")
                .but("products", "Boiling point", boils)
                .but("workup", "Gives other", "F1+ML1")
                .row("workup", "Step", "3", "Operation", "concentrate", "From", "F1", "Gives other", "P1+D1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "40", "Status", "kept");
        assertTrue(open(taken).get(0).endsWith(said), open(taken).get(0));
    }

    /** 19.00 g: P1 15.92 g of them, which gave P2, 14.00 g × 0.995 = 13.93 g; both liquors in one, 90 g × 55 mg/g = 4.95 g. */
    private static SmallBook twice(String massTakenOfP1) {
        return purified("16.00", "1")
                .row("workup", "Step", "3", "Operation", "chromatograph", "From", "P1", "Mass", massTakenOfP1)
                .but("workup", "Gives other", "P2+ML2")
                .row("workup", "Step", "4", "Operation", "combine", "From", "ML1+ML2", "Gives other", "ML3")
                .row("isolated", "Lot", "P2", "Product", "P", "Stage", "purified", "From", "P1", "Net", "14.00")
                .but("isolated", "Assay", "99.5")
                .but("isolated", "Relative standard uncertainty", "1")
                .row("layers", "Layer", "ML3", "Phase", "mother liquor", "Net", "90", "Status", "kept")
                .row("assays", "Sample", "ML3", "Substance", "P", "Method", "HPLC", "Result", "55", "Unit", "mg/g")
                .but("assays", "Relative standard uncertainty", "2");
    }

    @Test
    void whatWasPurifiedAgainIsPutInOnce() {
        Purification pooled = balance(twice(""));
        assertEquals(Set.of("C1"), pooled.sources());
        assertEquals(19.00, pooled.inGrams().value(), 1e-9);
        assertEquals(18.88, pooled.foundGrams().value(), 1e-9);
        assertEquals(List.of(), open(twice("")));
    }

    /** Of 16.00 g of P1 the column took 15.00 g: the rest, 1.00 g × 0.995, is where it was. */
    @Test
    void whatIsLeftOfALotPurifiedAgainIsFound() {
        assertEquals(18.88 + 0.995, balance(twice("15.00")).foundGrams().value(), 1e-9);
    }

    private static List<FindingCode> codes(SmallBook book) {
        return book.review().findings().stream().map(Finding::code).toList();
    }

    /** Of 20.00 g a column took 10.00 g; what a second step took is as it says, without a mass all of the rest: 19.00 or 17.10 g of product. */
    @ParameterizedTest
    @CsvSource({"10.00, 19.00", "8.00, 17.10", "'', 19.00"})
    void aLotPurifiedInTwoPartsIsPutInWithBoth(String second, double inGrams) {
        SmallBook parts = purified("8.00", "20")
                .but("workup", "Operation", "chromatograph")
                .but("workup", "Material", "")
                .but("workup", "Volume", "")
                .but("workup", "Mass", "10.00")
                .row("workup", "Step", "3", "Operation", "chromatograph", "From", "C1", "Mass", second)
                .but("workup", "Gives other", "P2")
                .row("isolated", "Lot", "P2", "Product", "P", "Stage", "purified", "From", "C1", "Net", "7.80")
                .but("isolated", "Assay", "99.5")
                .but("isolated", "Relative standard uncertainty", "1");
        assertEquals(inGrams, balance(parts).inGrams().value(), 1e-9);
        assertFalse(codes(parts).contains(FindingCode.LAYER_TAKEN_AFTER_CONSUMED));
        assertFalse(codes(parts).contains(FindingCode.PURIFIED_EXCEEDS_SOURCE));
    }

    @Test
    void aLotTakenWholeIsNotTakenAgain() {
        SmallBook again = purified("8.00", "20")
                .row("workup", "Step", "3", "Operation", "chromatograph", "From", "C1", "Mass", "10.00")
                .but("workup", "Gives other", "X1");
        assertTrue(codes(again).contains(FindingCode.LAYER_TAKEN_AFTER_CONSUMED));
    }
}
