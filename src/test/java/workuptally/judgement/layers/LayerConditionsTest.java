package workuptally.judgement.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/** Each condition on layer A1 met, not met and missing; see {@link WashedRun} for what it holds. */
class LayerConditionsTest {
    // R2: a crude of the free base that says nothing of itself, all of which became the salt

    @ParameterizedTest
    @CsvSource({"NMR, C1, MET", "'', C1, MISSING", "NMR, O2, MISSING"})
    void crudeThatWasMadeOnIsShownByWhatWasMadeOfIt(String identity, String from, State state) {
        SmallBook book = WashedRun.book()
                .but("isolated", "Assay", "")
                .but("isolated", "Identity by", "")
                .row("isolated", "Lot", "C2", "Product", "P", "Stage", "purified", "From", from, "Net", "19.60")
                .but("isolated", "Identity by", identity);
        assertEquals(state, WashedRun.condition(book, "R2").state());
    }

    // R1

    @Test
    void densityOfTheRecordedPhaseMeetsIdentity() {
        assertState(State.MET, "R1", WashedRun.book());
    }

    @Test
    void densityOfTheOtherPhaseDoesNotMeetIdentity() {
        // 45.0 g / 50 mL = 0.90 g/mL, ethyl acetate's density.
        assertState(State.NOT_MET, "R1", WashedRun.book().but("layers", "Net", "45.00"));
    }

    @Test
    void layerWithoutDensityOrCheckLeavesIdentityMissing() {
        assertState(State.MISSING, "R1", WashedRun.book().but("layers", "Volume", ""));
    }

    @Test
    void checkAtTheBenchMeetsIdentityWhereDensityCannotTell() {
        SmallBook book = WashedRun.book().but("layers", "Volume", "").but("workup", "Checked by", "water drop");
        assertState(State.MET, "R1", book);
    }

    @Test
    void contactWithASolventOfUnknownDensityLeavesIdentityMissing() {
        assertState(State.MISSING, "R1", WashedRun.book().but("charges", "Material", "secret solvent"));
    }

    // R2

    @Test
    void weighedLotWithItsIdentityMeetsIsolation() {
        assertState(State.MET, "R2", WashedRun.book());
    }

    @Test
    void lotWithoutAMassLeavesIsolationMissing() {
        assertState(State.MISSING, "R2", WashedRun.book().but("isolated", "Net", ""));
    }

    @Test
    void lotWithoutAssayAndIdentityLeavesIsolationMissing() {
        SmallBook book = WashedRun.book().but("isolated", "Assay", "").but("isolated", "Identity by", "");
        assertState(State.MISSING, "R2", book);
    }

    @Test
    void identityAloneMeetsIsolation() {
        assertState(State.MET, "R2", WashedRun.book().but("isolated", "Assay", ""));
    }

    @ParameterizedTest
    @CsvSource({
        "NMR: wrong compound, MISSING, 1",
        "NMR not clean, MISSING, 1",
        "pending, MISSING, 1",
        // the lot's own assay stands for it
        "?, MET, 0",
        "smell, MET, 1"
    })
    void identityThatIsDeniedOrPutOffLeavesIsolationMissingAndIsAskedAbout(String typed, State state, int findings) {
        SmallBook book = WashedRun.book().but("isolated", "Identity by", typed);
        assertState(state, "R2", book);
        assertEquals(
                findings,
                book.book().findings().stream()
                        .filter(f -> f.code() == FindingCode.IDENTITY_UNCLEAR)
                        .count());
    }

    // R3

    @Test
    void nonDetectMeetsKnownContent() {
        assertState(State.MET, "R3", WashedRun.book().but("assays", "Result", "<0.05"));
    }

    @Test
    void conservationMeetsKnownContent() {
        Condition condition = WashedRun.condition(notAssayed(), "R3");
        assertEquals(State.MET, condition.state());
        assertEquals(
                "P: not assayed; at most theory less what was found elsewhere", Wording.POINT.of(condition.evidence()));
    }

    @Test
    void layerWithoutAssayOrBoundLeavesContentMissing() {
        assertState(State.MISSING, "R3", notAssayed().but("isolated", "Assay", ""));
    }

    // R4

    @ParameterizedTest
    @CsvSource({
        // HPLC 2 %: 0.38 × (1 + 1.645 × 0.02) = 0.392502 g = 1.96 %; 0.39 × 1.0329 = 0.402831 g = 2.01 % of 20.0 g.
        "0.38, MET",
        "0.39, NOT_MET"
    })
    void guardBandIsAddedBeforeTheLayerLimit(String grams, State state) {
        assertState(state, "R4", WashedRun.book().but("assays", "Result", grams));
    }

    @Test
    void nonDetectCountsAtItsLimit() {
        // <0.41 g is at most 2.05 % of theory.
        assertState(State.NOT_MET, "R4", WashedRun.book().but("assays", "Result", "<0.41"));
    }

    @Test
    void layerLimitOfTheBookIsUsed() {
        assertState(State.NOT_MET, "R4", WashedRun.book().limit("Layer limit", "0.5"));
    }

    @Test
    void unknownContentLeavesItsSizeMissing() {
        assertState(State.MISSING, "R4", notAssayed().but("isolated", "Assay", ""));
    }

    // R5

    @Test
    void layersThatTogetherFitMeetTheRunLimit() {
        assertState(State.MET, "R5", WashedRun.book());
    }

    @Test
    void largestOfTheLayersThatTogetherDoNotFitIsHeld() {
        // 0.30 g + 0.15 g + <0.02 g = 2.4 % of 20.0 g: without A1 the rest is 0.9 %.
        SmallBook book = WashedRun.book()
                .but("assays", "Result", "0.30")
                .row("layers", "Layer", "A3", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept")
                .row("workup", "Step", "0", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "RM")
                .but("workup", "Gives aqueous", "A3")
                .row("assays", "Sample", "A3", "Substance", "P", "Method", "HPLC", "Result", "0.15", "Unit", "g");
        assertState(State.NOT_MET, "R5", book);
        assertEquals(
                State.MET, WashedRun.decision(book, "A3").conditions().get(4).state());
    }

    // R6

    @Test
    void closedBalanceIsMet() {
        assertState(State.MET, "R6", WashedRun.book());
    }

    @Test
    void openBalanceIsMetByALayerWithItsOwnAssay() {
        // 19.2 g of 20.0 g: open by 3.4 %.
        Condition condition = WashedRun.condition(WashedRun.book().but("isolated", "Net", "19.20"), "R6");
        assertEquals(State.MET, condition.state());
        assertTrue(Wording.POINT.of(condition.evidence()).endsWith("but this layer has its own assay"));
    }

    @Test
    void moreIsMissingThanAnyPlaceCanHoldSoThatAReadingMustBeWrong() {
        // 17.0 g of 20.0 g: at least 12.8 % is missing; glass 2 %, run limit 2 %, and S was looked for in the lot.
        Condition condition = WashedRun.condition(
                WashedRun.book()
                        .but("isolated", "Net", "17.00")
                        .row("assays", "Sample", "C1", "Substance", "S", "Method", "HPLC", "Result", "0.1")
                        .but("assays", "Unit", "% w/w"),
                "R6");
        assertEquals(State.NOT_MET, condition.state());
        assertTrue(
                Wording.POINT
                        .of(condition.evidence())
                        .endsWith("look for a portion without a row, then for a wrong reading"),
                Wording.POINT.of(condition.evidence()));
    }

    @Test
    void muchThatIsMissingAndNobodyLookedForAsksForThatAssayFirst() {
        for (String net : List.of("17.00", "18.20")) {
            Condition condition = WashedRun.condition(WashedRun.book().but("isolated", "Net", net), "R6");
            assertEquals(State.NOT_MET, condition.state());
            assertTrue(
                    Wording.POINT.of(condition.evidence()).endsWith("; first assay A1, A2 for S"),
                    Wording.POINT.of(condition.evidence()));
        }
    }

    /** 13.6 g of 20.0 g: a third of the substrate is left, as was read from the mixture. */
    @Test
    void aConversionAccountsForWhatNeverFormed() {
        SmallBook book = WashedRun.book().but("isolated", "Net", "13.60");
        assertState(State.NOT_MET, "R6", book);
        assertState(State.MET, "R6", book.first("runs", "Conversion (%)", "70"));
        assertState(State.NOT_MET, "R6", book.first("runs", "Conversion (%)", "<70"));
        assertState(State.NOT_MET, "R6", book.first("runs", "Conversion (%)", "95"));
    }

    @Test
    void aBalanceTooCoarseToTellIsJudgedByItsBestEstimate() {
        // 17.0 g and 19.8 g of 20.0 g, each ± 10 %
        SmallBook book = WashedRun.book().but("isolated", "Relative standard uncertainty", "5");
        assertState(State.MET, "R6", book.but("isolated", "Net", "19.80"));
        assertState(State.NOT_MET, "R6", book.but("isolated", "Net", "17.00"));
    }

    @Test
    void aStepThatTakesWhatNothingGivesLeavesTheLayersOpen() {
        assertState(State.NOT_MET, "R6", WashedRun.book().first("workup", "From", "O9"));
    }

    @Test
    void muchThatIsMissingWithALayerNotAssayedAsksForThatAssayFirst() {
        SmallBook book = WashedRun.book()
                .but("isolated", "Net", "17.00")
                .row("layers", "Layer", "A3", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept");
        Condition condition = WashedRun.condition(book, "R6");
        assertEquals(State.NOT_MET, condition.state());
        assertTrue(
                Wording.POINT.of(condition.evidence()).endsWith("; first assay A3; assay A1, A2, A3 for S"),
                Wording.POINT.of(condition.evidence()));
    }

    @Test
    void openBalanceIsNotMetByALayerWithoutOne() {
        assertState(State.NOT_MET, "R6", notAssayed().but("isolated", "Net", "17.00"));
    }

    @Test
    void balanceThatIsOverIsNotMet() {
        assertState(State.NOT_MET, "R6", WashedRun.book().but("isolated", "Net", "22.00"));
    }

    @Test
    void ragThatWasNotAssayedLeavesEveryLayerOpen() {
        SmallBook book = WashedRun.book().but("workup", "Gives other", "R1");
        book.row("layers", "Layer", "R1", "Phase", "rag", "Volume", "5", "Net", "5.00", "Status", "kept");
        assertState(State.NOT_MET, "R6", book);
    }

    @Test
    void portionThatNobodyRecordedLeavesEveryLayerOpen() {
        Condition condition = WashedRun.condition(WashedRun.book().but("workup", "Gives other", "X9"), "R6");
        assertEquals(State.NOT_MET, condition.state());
        assertEquals("X9 not assayed or not recorded", Wording.POINT.of(condition.evidence()));
    }

    @Test
    void runWithoutClosureLeavesTheBalanceMissing() {
        assertState(State.MISSING, "R6", WashedRun.book().but("isolated", "Assay", ""));
    }

    // R7

    @Test
    void openStopIsNotMet() {
        SmallBook book = WashedRun.book().but("isolated", "Net", "").but("isolated", "Gross", "52.00");
        Condition condition = WashedRun.condition(book, "R7");
        assertEquals(State.NOT_MET, condition.state());
        assertTrue(Wording.POINT.of(condition.evidence()).contains("tare missing"));
    }

    private static SmallBook withHydride() {
        return WashedRun.book()
                .row("charges", "Material", "sodium borohydride", "Role", "reagent", "Actual amount", "1.00")
                .but("charges", "Actual unit", "g");
    }

    @Test
    void quenchThatNobodyTestedKeepsTheLayers() {
        Condition condition = WashedRun.condition(withHydride(), "R7");
        assertEquals(State.NOT_MET, condition.state());
        assertTrue(
                Wording.POINT.of(condition.evidence()).contains("quench not shown"),
                Wording.POINT.of(condition.evidence()));
    }

    @Test
    void namedPersonMaySettleWhatWasSeenAtTheBench() {
        SmallBook settled = withHydride()
                .row(
                        "corrections",
                        "When",
                        "2026-03-05",
                        "Who",
                        "C1",
                        "Record",
                        "X1 quench-not-shown",
                        "New",
                        "settled")
                .but("corrections", "Reason", "no more gas with acid, seen by two");
        assertState(State.MET, "R7", settled);
        assertEquals(Severity.NOTE, quench(settled).severity());
        assertTrue(Wording.POINT.of(quench(settled).action()).startsWith("Settled by C1, 2026-03-05: no more gas"));
        assertState(State.NOT_MET, "R7", settled.but("corrections", "Who", ""));
        assertEquals(Severity.HOLD, quench(settled).severity());
    }

    private static Finding quench(SmallBook book) {
        return book.review().findings().stream()
                .filter(f -> f.code() == FindingCode.QUENCH_NOT_SHOWN)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void lastingEmulsionKeepsTheLayersThatWentThroughIt() {
        SmallBook first = WashedRun.book().but("workup", "Emulsion", "persistent");
        assertState(State.NOT_MET, "R7", first);
        SmallBook later = WashedRun.book();
        later.row("workup", "Step", "4", "Operation", "wash", "From", "O9", "Material", "water", "Volume", "50")
                .but("workup", "Emulsion", "persistent")
                .but("workup", "Gives aqueous", "A9");
        assertState(State.MET, "R7", later);
    }

    @Test
    void runWithoutAStopIsMet() {
        assertState(State.MET, "R7", WashedRun.book());
    }

    // R8

    @Test
    void secondWantedProductFoundNowhereIsAskedFor() {
        Condition condition = WashedRun.condition(withSecondProduct(), "R8");
        assertEquals(State.MISSING, condition.state());
        assertEquals("ask whether Q is wanted from this layer", Wording.POINT.of(condition.evidence()));
    }

    @Test
    void secondWantedProductOfWhichTheRunLacksMoreThanTheLimitIsAskedFor() {
        SmallBook book = withSecondProduct()
                .row("isolated", "Lot", "C2", "Product", "Q", "Stage", "crude", "Net", "1.00", "Assay", "99");
        Condition condition = WashedRun.condition(book, "R8");
        assertEquals(State.MISSING, condition.state());
        assertTrue(
                Wording.POINT.of(condition.evidence()).startsWith("an assay for Q, of which at most "),
                Wording.POINT.of(condition.evidence()));
    }

    // R9

    @Test
    void quenchIsAskedOnlyForAProposedTransfer() {
        assertState(State.NOT_ASKED, "R9", quenched("negative", false));
    }

    @ParameterizedTest
    @CsvSource({"negative, MET", "positive, NOT_MET", "not done, MISSING", "'', MISSING"})
    void quenchTestDecides(String test, State state) {
        assertState(state, "R9", quenched(test, true));
    }

    @Test
    void lastTestCounts() {
        SmallBook book = quenched("positive", true)
                .row("workup", "Step", "0.7", "Operation", "quench", "From", "RM", "Gives other", "RM")
                .but("workup", "Quench test", "negative");
        assertState(State.MET, "R9", book);
    }

    @Test
    void quenchAfterTheLastTestLeavesItMissing() {
        SmallBook book = quenched("negative", true)
                .row("workup", "Step", "0.7", "Operation", "quench", "From", "RM", "Gives other", "RM");
        assertState(State.MISSING, "R9", book);
    }

    @Test
    void runWithoutReactiveChargeAndQuenchIsMet() {
        assertState(State.MET, "R9", proposed(WashedRun.book(), "aqueous-neutral", "10"));
    }

    @Test
    void reactiveChargeWithoutAnyQuenchIsMissing() {
        SmallBook book = proposed(WashedRun.book(), "aqueous-neutral", "10")
                .row("charges", "Material", "sodium borohydride", "Role", "reagent", "Formula", "NaBH4")
                .but("charges", "Actual amount", "1.00")
                .but("charges", "Actual unit", "g");
        assertState(State.MISSING, "R9", book);
    }

    // R10

    @Test
    void containerIsAskedOnlyForAProposedTransfer() {
        assertState(State.NOT_ASKED, "R10", WashedRun.book());
    }

    @Test
    void containerOfTheStreamWithRoomIsMet() {
        assertState(State.MET, "R10", proposed(WashedRun.book(), "aqueous-neutral", "10"));
    }

    @Test
    void containerOfAnotherStreamIsNotMet() {
        assertState(State.NOT_MET, "R10", proposed(WashedRun.book(), "halogenated-organic", "10"));
    }

    @Test
    void containerWithoutRoomIsNotMet() {
        // 50 mL into 0.05 L.
        assertState(State.NOT_MET, "R10", proposed(WashedRun.book(), "aqueous-neutral", "0.05"));
    }

    @Test
    void containerWithoutCapacityIsMissing() {
        assertState(State.MISSING, "R10", proposed(WashedRun.book(), "aqueous-neutral", ""));
    }

    // R11

    @Test
    void runOnHoldIsNotMet() {
        assertState(State.NOT_MET, "R11", WashedRun.book().limit("Hold runs", "X0; X1"));
    }

    @Test
    void runNotOnHoldIsMet() {
        SmallBook book = WashedRun.book().row("runs", "Run", "X0", "Status", "planned");
        assertState(State.MET, "R11", book.limit("Hold runs", "X0"));
    }

    @Test
    void holdOfARunThatTheBookLacksIsNotMet() {
        assertState(State.NOT_MET, "R11", WashedRun.book().limit("Hold runs", "X0"));
    }

    @Test
    void holdIsNotAskedWhereTheBookHoldsNoRun() {
        assertState(State.NOT_ASKED, "R11", WashedRun.book());
    }

    // R12

    @ParameterizedTest
    @CsvSource({
        // Run of 2026-03-02 and 7 days: 2026-03-09.
        "2026-03-08, NOT_MET",
        "2026-03-09, MET"
    })
    void waitingTimeCountsFromTheDayOfTheRun(String asOf, State state) {
        assertState(state, "R12", WashedRun.book().limit("Waiting days", "7").limit("As of", asOf));
    }

    @Test
    void waitingTimeWithoutADayOfTheReportIsMissing() {
        assertState(State.MISSING, "R12", WashedRun.book().limit("Waiting days", "7"));
    }

    @Test
    void waitingTimeIsNotAskedWhereNoneIsSet() {
        assertState(State.NOT_ASKED, "R12", WashedRun.book());
    }

    private static SmallBook notAssayed() {
        return WashedRun.book().but("assays", "Substance", "S");
    }

    private static SmallBook withSecondProduct() {
        return WashedRun.book()
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150", "Coefficient", "1");
    }

    private static SmallBook quenched(String test, boolean propose) {
        SmallBook book = WashedRun.book()
                .row("workup", "Step", "0.5", "Operation", "quench", "From", "RM", "Gives other", "RM")
                .but("workup", "Quench test", test);
        return propose ? proposed(book, "aqueous-neutral", "10") : book;
    }

    private static SmallBook proposed(SmallBook book, String stream, String litres) {
        return book.but("layers", "pH", "7")
                .row("containers", "Container", "W1", "Waste stream", stream, "Capacity", litres, "Tare", "500")
                .row("transfers", "Transfer", "T1", "Layer", "A1", "Container", "W1", "Status", "proposed");
    }

    private static void assertState(State state, String id, SmallBook book) {
        Condition condition = WashedRun.condition(book, id);
        assertEquals(state, condition.state(), Wording.POINT.of(condition.evidence()));
    }

    @Test
    void lowerLayerAgainstTheDensitiesLeavesTheIdentityOpen() {
        // ethyl acetate floats on water; the layer was not weighed, so that only the bench tells which is which
        SmallBook book = WashedRun.book()
                .but("layers", "Net", "")
                .but("workup", "Checked by", "water drop")
                .but("workup", "Lower layer", "aqueous");
        assertEquals(State.MET, WashedRun.condition(book, "R1").state());
        assertEquals(
                State.MISSING,
                WashedRun.condition(book.but("workup", "Lower layer", "organic"), "R1")
                        .state());
    }

    @Test
    void rowWithoutAPhaseThatNobodyAssayedMayBeARag() {
        // A3 is given as aqueous by its step; whether it was the rag only its own row could tell
        SmallBook book = WashedRun.book()
                .row("workup", "Step", "2a", "Operation", "wash", "From", "O2", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A3")
                .row("layers", "Layer", "A3", "Phase", "", "Volume", "50", "Net", "49.90", "Status", "kept");
        assertState(State.NOT_MET, "R6", book);
        assertState(
                State.MET,
                "R6",
                book.row("assays", "Sample", "A3", "Substance", "P", "Method", "HPLC")
                        .but("assays", "Result", "<0.01")
                        .but("assays", "Unit", "g"));
    }
}
