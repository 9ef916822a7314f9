package workuptally.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.layers.LayerIdentity;

/** 100 mL of toluene (0.867 g/mL) washed with 50 mL of water: 50 g in 50 mL fit the water, 43.35 g the toluene, 46.7 g neither. */
class RunTallyTest {
    @ParameterizedTest
    @CsvSource({
        // net mass of 50 mL, how the order was checked, whether the phase is known
        "50.00, '', true",
        "43.35, '', true",
        "'', '', false",
        "'', not checked, false",
        "'', density, true",
        "'', water drop, true"
    })
    void phaseOfARecordedLayerIsKnownByItsDensityOrACheckAtTheBench(String net, String checked, boolean known) {
        SmallBook book = measured(net).but("workup", "Checked by", checked);
        assertEquals(known, book.tally().isPhaseKnown("A1"));
    }

    @Test
    void densityOfTheOtherPhaseSaysSwapped() {
        assertEquals(
                LayerIdentity.Verdict.SWAPPED,
                measured("43.35").tally().identity("A1").orElseThrow().verdict());
        assertEquals(
                LayerIdentity.Verdict.CONSISTENT,
                measured("50.00").tally().identity("A1").orElseThrow().verdict());
        assertTrue(measured("50.00").tally().identity("O1").isEmpty());
    }

    @Test
    void layerOfTheOtherPhaseIsMadeUpAsThatPhase() {
        assertEquals(
                "water",
                measured("50.00")
                        .tally()
                        .makeUp("A1")
                        .orElseThrow()
                        .grams()
                        .keySet()
                        .iterator()
                        .next());
        assertEquals(
                "toluene",
                measured("43.35")
                        .tally()
                        .makeUp("A1")
                        .orElseThrow()
                        .grams()
                        .keySet()
                        .iterator()
                        .next());
    }

    @Test
    void labelWithoutARowRestsOnTheCheckOfItsStep() {
        assertFalse(washed().tally().isPhaseKnown("A1"));
        assertFalse(washed().tally().isPhaseKnown("O1"));
        assertFalse(washed().but("workup", "Checked by", "not checked").tally().isPhaseKnown("A1"));
        assertTrue(washed().but("workup", "Checked by", "volumes").tally().isPhaseKnown("A1"));
    }

    @Test
    void portionOfAStepThatGivesOneLiquidCannotBeMistaken() {
        assertTrue(washed().but("workup", "Gives organic", "").tally().isPhaseKnown("A1"));
        assertTrue(washed().but("workup", "Gives aqueous", "").tally().isPhaseKnown("O1"));
        assertTrue(washed().tally().isPhaseKnown("RM"));
        assertTrue(washed().tally().isPhaseKnown("nowhere"));
    }

    @Test
    void labelThatTheStepAlreadyTookIsNotItsDoing() {
        // O1 goes on under its own label, so the second wash tells nothing new of it
        SmallBook book = washed().but("workup", "Checked by", "volumes")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A2");
        assertTrue(book.tally().isPhaseKnown("O1"));
        assertFalse(book.tally().isPhaseKnown("A2"));
    }

    @Test
    void ragIsNeitherPhase() {
        SmallBook book = washed().but("workup", "Gives other", "R1").row("layers", "Layer", "R1", "Phase", "rag");
        assertTrue(book.tally().isPhaseKnown("R1"));
        assertFalse(book.tally().isPhaseKnown("A1"));
    }

    @Test
    void layersAndMakeUpsAreFoundByTheirLabel() {
        RunTally tally = measured("50.00").tally();
        assertEquals("A1", tally.layer("A1").orElseThrow().label());
        assertTrue(tally.layer("A9").isEmpty());
        assertEquals("A1", tally.makeUp("A1").orElseThrow().layer());
        assertTrue(tally.makeUp("A9").isEmpty());
        assertTrue(tally.identity("A9").isEmpty());
    }

    @Test
    void metricsNeedAnAssayedProduct() {
        assertTrue(washed().tally().metrics().isEmpty());
        SmallBook book = washed().row(
                        "isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O1", "Net", "18.00")
                .but("isolated", "Assay", "90");
        assertTrue(book.tally().metrics().isPresent());
    }

    @Test
    void onlyAPlannedRunHasAPlanAndItsResultsStayBesideIt() {
        assertTrue(washed().tally().plan().isEmpty());
        SmallBook planned = washed().first("runs", "Status", "planned")
                .first("charges", "Planned amount", "10.00")
                .first("charges", "Planned unit", "g");
        RunTally tally = planned.tally();
        assertEquals(2, tally.plan().orElseThrow().layers().size());
        assertEquals(2, tally.amounts().size());
        assertEquals(
                20.0, tally.theory().orElseThrow().products().get(0).massGrams().value(), 1e-9);
        assertEquals(1, tally.evidence().contactMixtures().size());
    }

    private static SmallBook measured(String net) {
        return washed().row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", net, "Status", "kept");
    }

    private static SmallBook washed() {
        return SmallBook.reaction()
                .row("charges", "Material", "toluene", "Role", "solvent", "Actual amount", "100", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
    }
}
