package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision;
import workuptally.model.FindingCode;
import workuptally.tally.suspects.Suspect;
import workuptally.tally.suspects.UsualSlip;

/**
 * Slips in an invented azide and an invented amine hydrochloride, each sound but for what is changed: the cell that was changed is named,
 * with the entry that stood there. Molar masses by the standard atomic weights of IUPAC 2021.
 */
class SuspectCellsTest {

    /** Benzyl bromide 5.00 g at 98 % to benzyl azide: 95 % in the crude, 34 mg in A1, all weighed. */
    private static SmallBook azide(String charged, String a1Tare, String a1Result) {
        return azide(charged, a1Result)
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Status", "kept", "Temperature", "21")
                .but("layers", "Vessel", "E-A1")
                .but("layers", "Volume", "170")
                .but("layers", "Gross", "277.00")
                .but("layers", "Tare", a1Tare)
                .row("isolated", "Lot", "CR1", "Product", "benzyl azide", "Stage", "crude", "From", "O5")
                .but("isolated", "Vessel", "F-CR1")
                .but("isolated", "Gross", "93.9300")
                .but("isolated", "Tare", "90.1180")
                .but("isolated", "Assay", "97.5")
                .but("isolated", "Relative standard uncertainty", "1");
    }

    private static SmallBook azide(String charged, String a1Result) {
        return SmallBook.empty()
                .row("products", "Product", "benzyl azide", "Wanted", "yes", "Formula", "C7H7N3", "Coefficient", "1")
                .but("products", "Skeleton", "benzyl bromide 1")
                .row("charges", "Material", "benzyl bromide", "Role", "substrate", "Formula", "C7H7Br")
                .but("charges", "Coefficient", "1")
                .but("charges", "Actual amount", charged)
                .but("charges", "Actual unit", "g")
                .but("charges", "Assay", "98")
                .row("charges", "Material", "sodium azide", "Role", "reagent", "Formula", "NaN3")
                .but("charges", "Coefficient", "1")
                .but("charges", "Actual amount", "2.30")
                .but("charges", "Actual unit", "g")
                .but("charges", "Assay", "99")
                .row("charges", "Material", "DMSO", "Role", "solvent", "Formula", "C2H6OS", "Density", "1.10")
                .but("charges", "Actual amount", "40")
                .but("charges", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "dilute", "From", "RM", "Material", "water", "Volume", "120")
                .row("workup", "Step", "2", "Operation", "extract", "From", "RM", "Material", "MTBE", "Volume", "60")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "3", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "40")
                .but("workup", "Gives organic", "O5")
                .but("workup", "Gives aqueous", "A2")
                .row("workup", "Step", "4", "Operation", "concentrate", "From", "O5", "Gives other", "D1+CR1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Status", "to reuse", "Net", "42.5")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Status", "kept", "Temperature", "21")
                .but("layers", "Vessel", "E-A2")
                .but("layers", "Volume", "41")
                .but("layers", "Gross", "111.20")
                .but("layers", "Tare", "70.00")
                .row("assays", "Sample", "A1", "Substance", "benzyl azide", "Method", "HPLC", "Result", a1Result)
                .but("assays", "Unit", "mg/mL")
                .but("assays", "Relative standard uncertainty", "2")
                .row("assays", "Sample", "A2", "Substance", "benzyl azide", "Method", "HPLC", "Result", "<0.05")
                .but("assays", "Unit", "mg/mL");
    }

    /** Benzaldehyde 2.122 g at 99 % to dibenzylamine hydrochloride, theory 4.627 g; 94 % in C1. */
    private static SmallBook salt(String formula, String molarMass) {
        return SmallBook.empty()
                .row("products", "Product", "dibenzylamine hydrochloride", "Wanted", "yes", "Formula", formula)
                .but("products", "Molar mass", molarMass)
                .but("products", "Coefficient", "1")
                .but("products", "Skeleton", "benzaldehyde 1")
                .row("charges", "Material", "benzaldehyde", "Role", "substrate", "Formula", "C7H6O")
                .but("charges", "Coefficient", "1")
                .but("charges", "Actual amount", "2.122")
                .but("charges", "Actual unit", "g")
                .but("charges", "Assay", "99")
                .row("charges", "Material", "methanol", "Role", "solvent", "Formula", "CH4O", "Density", "0.791")
                .but("charges", "Actual amount", "50")
                .but("charges", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "filter", "From", "RM", "Gives other", "C1+ML1")
                .row("layers", "Layer", "ML1", "Phase", "mother liquor", "Status", "kept", "Volume", "44")
                .but("layers", "Net", "34.2")
                .row("assays", "Sample", "ML1", "Substance", "dibenzylamine hydrochloride", "Method", "HPLC")
                .but("assays", "Result", "1.80")
                .but("assays", "Unit", "mg/mL")
                .but("assays", "Relative standard uncertainty", "2")
                .row("isolated", "Lot", "C1", "Product", "dibenzylamine hydrochloride", "Stage", "purified")
                .but("isolated", "From", "RM")
                .but("isolated", "Gross", "45.6222")
                .but("isolated", "Tare", "41.2210")
                .but("isolated", "Assay", "99.1")
                .but("isolated", "Relative standard uncertainty", "1");
    }

    private static Suspect first(RunReview review) {
        assertFalse(
                review.suspects().list().isEmpty(), "off: " + review.suspects().off());
        return review.suspects().list().get(0);
    }

    private static void named(Suspect suspect, String place, String suggested, UsualSlip slip) {
        assertEquals(place, suspect.place().inWords());
        assertEquals(suggested, suspect.suggested());
        assertEquals(slip, suspect.slip());
    }

    @Test
    void soundRunsNameNoCell() {
        assertEquals(
                List.of(),
                azide("5.00", "106.00", "0.20").reviewOfRun().suspects().list());
        assertEquals(
                List.of(), salt("C14H16ClN", "233.74").reviewOfRun().suspects().list());
    }

    @Test
    void aSubstrateTenTimesTooLargeIsNamedAndNoLayerCompletes() {
        RunReview review = azide("50.0", "106.00", "0.20").reviewOfRun();
        named(first(review), "charges.csv line 2, Actual amount", "5.00", UsualSlip.DECIMAL_POINT);
        assertTrue(review.decisions().stream().noneMatch(d -> d.outcome() == LayerDecision.Outcome.EVIDENCE_COMPLETE));
    }

    @Test
    void theFormThatTheNameSpeaksOfLeavesNoOtherCellSuspect() {
        RunReview review = salt("C14H15N", "197.28").reviewOfRun();
        assertEquals(1, review.suspects().list().size());
        named(first(review), "products.csv line 2, Formula", "C14H16ClN", UsualSlip.SALT_FOR_BASE);
        // the stop says it already
        assertTrue(salt("C14H15N", "197.28").review().findings().stream()
                .noneMatch(f -> f.code() == FindingCode.ENTRY_SUSPECT));
    }

    @Test
    void aCrudeBesideThePurifiedLotIsCountedTwice() {
        RunReview review = salt("C14H16ClN", "233.74")
                .row("isolated", "Lot", "B1", "Product", "dibenzylamine hydrochloride", "Stage", "crude")
                .but("isolated", "From", "RM")
                .but("isolated", "Gross", "64.530")
                .but("isolated", "Tare", "60.000")
                .but("isolated", "Assay", "98.5")
                .reviewOfRun();
        assertEquals(1, review.suspects().list().size());
        named(first(review), "isolated.csv line 3, Lot", "the same material as C1", UsualSlip.COUNTED_TWICE);
    }

    @Test
    void aCopiedTareTellsTheCellAndInventsNoFigure() {
        // 70.00 is the tare of A2 in the line above
        named(
                first(azide("5.00", "70.00", "0.20").reviewOfRun()),
                "layers.csv line 4, Tare",
                "",
                UsualSlip.NEIGHBOURING_ROW);
    }

    @Test
    void aPointThatSlippedIsNoSwap() {
        named(
                first(azide("5.00", "106.00", "2.0").reviewOfRun()),
                "assays.csv line 2, Result",
                "0.20",
                UsualSlip.DECIMAL_POINT);
    }

    @Test
    void aGrossUnderNetIsNamed() {
        SmallBook lot = azide("5.00", "106.00", "0.20")
                .but("isolated", "Net", "93.9300")
                .but("isolated", "Gross", "")
                .but("isolated", "Tare", "");
        named(first(lot.reviewOfRun()), "isolated.csv line 2, Net", "", UsualSlip.GROSS_FOR_NET);
        // with the vessel in the register, gross less tare: 93.9300 - 90.1180
        named(
                first(lot.row("vessels", "Vessel", "F-CR1", "Date", "2026-03-01", "Clean dry tare", "90.1180")
                        .reviewOfRun()),
                "isolated.csv line 2, Net",
                "3.8120",
                UsualSlip.GROSS_FOR_NET);
        SmallBook layer = azide("5.00", "106.00", "0.20")
                .but("layers", "Net", "277.00")
                .but("layers", "Gross", "")
                .but("layers", "Tare", "");
        named(first(layer.reviewOfRun()), "layers.csv line 4, Net", "", UsualSlip.GROSS_FOR_NET);
    }

    /** D1, 42.5 g, goes into a container by these amounts. */
    private static SmallBook transferred(String... amounts) {
        SmallBook book =
                azide("5.00", "106.00", "0.20").row("containers", "Container", "W-1", "Waste stream", "solvents");
        for (int i = 0; i < amounts.length; i++) {
            book.row("transfers", "Transfer", "T" + i, "Layer", "D1", "Container", "W-1", "Amount", amounts[i])
                    .but("transfers", "Status", "done");
        }
        return book;
    }

    @Test
    void aPortionTransferredInPartsContradictsNothing() {
        assertEquals(
                List.of(), transferred("21.3", "21.2").reviewOfRun().suspects().list());
        assertEquals(List.of(), transferred("20.0").reviewOfRun().suspects().list());
    }

    @Test
    void theAmountOfATransferIsNamedAndNotTheLayer() {
        named(
                first(transferred("4.25").reviewOfRun()),
                "transfers.csv line 2, Amount",
                "42.5",
                UsualSlip.DECIMAL_POINT);
    }

    @Test
    void noSlipIsSuggestedWhereAStepIsMissing() {
        // what gives O1 and A1 is not there
        SmallBook lost = azide("50.0", "106.00", "0.20").first("workup", "From", "RM");
        assertFalse(lost.reviewOfRun().suspects().list().isEmpty());
        SmallBook withoutStep = azide("50.0", "106.00", "0.20").but("workup", "From", "O6");
        assertEquals(List.of(), withoutStep.reviewOfRun().suspects().list());
    }

    @Test
    void aCellThatNobodyCouldReadAccusesNoOther() {
        SmallBook unread = azide("5.00", "106.00", "0.20").first("charges", "Assay", "990");
        assertEquals(List.of(), unread.reviewOfRun().suspects().list());
    }

    @Test
    void aChargeEnteredTwiceIsNamedAsSuch() {
        SmallBook twice = salt("C14H16ClN", "233.74")
                .row("charges", "Material", "benzaldehyde", "Role", "substrate", "Formula", "C7H6O")
                .but("charges", "Coefficient", "1")
                .but("charges", "Actual amount", "2.122")
                .but("charges", "Actual unit", "g")
                .but("charges", "Assay", "99");
        Suspect suspect = first(twice.reviewOfRun());
        assertEquals(UsualSlip.COUNTED_TWICE, suspect.slip());
        assertEquals("charges.csv line 4, Material", suspect.place().inWords());
    }

    @Test
    void aPurifiedLotThatWeighsMoreThanItsCrudeIsNamed() {
        SmallBook purified = azide("5.00", "106.00", "0.20")
                .row("isolated", "Lot", "P1", "Product", "benzyl azide", "Stage", "purified", "From", "CR1")
                .but("isolated", "Gross", "74.3152")
                .but("isolated", "Tare", "44.4471")
                .but("isolated", "Assay", "99");
        // 47.3152 less 44.4471 of 3.812 g crude
        named(first(purified.reviewOfRun()), "isolated.csv line 3, Gross", "47.3152", UsualSlip.DIGITS_SWAPPED);
    }

    @Test
    void anIntermediateThatHoldsATenthOfWhatCameOutOfItIsNamed() {
        // O5, 50 mL, gave 3.7 g of benzyl azide: 74 mg/mL, not 7.4
        SmallBook forgotten = azide("5.00", "106.00", "0.20")
                .row("layers", "Layer", "O5", "Phase", "organic", "Volume", "50", "Status", "consumed")
                .row("assays", "Sample", "O5", "Substance", "benzyl azide", "Method", "HPLC", "Result", "7.45")
                .but("assays", "Unit", "mg/mL")
                .but("assays", "Relative standard uncertainty", "2");
        named(first(forgotten.reviewOfRun()), "assays.csv line 4, Result", "74.5", UsualSlip.DECIMAL_POINT);
        SmallBook sound = forgotten.but("assays", "Result", "74.5");
        assertEquals(List.of(), sound.reviewOfRun().suspects().list());
    }
}
