package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.report.view.wording.Wording;
import workuptally.tally.layers.LayerIdentity;
import workuptally.tally.layers.LayerIdentity.PositionCheck;
import workuptally.tally.layers.LayerIdentity.Verdict;

/**
 * Which layer is which by its density. Densities of the liquids at 20 °C, from memory of the CRC Handbook of Chemistry and Physics:
 * ethyl acetate 0.900, dichloromethane 1.327, water 0.998, saturated sodium chloride about 1.20 g/mL. The weighings are invented.
 */
class LayerIdentityTest {
    private static final double TOLERANCE_GRAMS_PER_MILLILITRE = 0.02;

    @TempDir
    Path folder;

    private LayerIdentity identity(ExampleBook book, String label) throws Exception {
        return book.review(folder).runs().get(0).tally().identity(label).orElseThrow();
    }

    private static ExampleBook dichloromethane(String density) {
        return ExampleBook.clean()
                .with("charges", "ethyl acetate,solvent,C4H8O2", "dichloromethane,solvent,CH2Cl2")
                .with("charges", "0.902", density);
    }

    @Test
    void pureSolventIsExpectedAtItsHandbookDensity() throws Exception {
        assertEquals(
                1.327,
                identity(dichloromethane("1.327"), "A1").expectedOrganic().highGramsPerMillilitre(),
                TOLERANCE_GRAMS_PER_MILLILITRE);
    }

    @Test
    void brineIsExpectedNearItsHandbookDensity() throws Exception {
        assertEquals(
                1.20,
                identity(ExampleBook.clean(), "A2").expectedAqueous().lowGramsPerMillilitre(),
                TOLERANCE_GRAMS_PER_MILLILITRE);
    }

    /** Broth of 3.4 % is water for the most part, about 1.03 g/mL (common practice); what else it holds is not known, so nothing is expected of it. */
    @ParameterizedTest
    @CsvSource({"3.4, false", "60, true"})
    void aChargeOfLowStrengthLeavesNoDensityToExpect(String percent, boolean expected) {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "3-hydroxybutyric acid in broth", "Role", "component", "Formula", "C4H8O3")
                .but("charges", "Actual amount", "1.52")
                .but("charges", "Actual unit", "kg")
                .but("charges", "Assay", percent)
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "MTBE", "Volume", "1000")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("charges", "Material", "water", "Role", "solvent", "Actual amount", "90", "Actual unit", "mL")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "1540", "Net", "1590", "Status", "kept");
        assertEquals(expected, book.tally().identity("A1").isPresent());
        boolean doubted = book.reviewOfRun().findings().stream()
                .anyMatch(f -> Wording.POINT.of(f.seen()).contains("off either phase"));
        assertTrue(expected || !doubted);
    }

    @Test
    void brineUnderEthylAcetateIsConsistent() throws Exception {
        assertEquals(Verdict.CONSISTENT, identity(ExampleBook.clean(), "A2").verdict());
    }

    @Test
    void lowerBrineAgreesWithItsDensity() throws Exception {
        assertEquals(PositionCheck.AGREES, identity(ExampleBook.clean(), "A2").position());
    }

    @Test
    void upperBrineContradictsItsDensity() throws Exception {
        LayerIdentity identity =
                identity(ExampleBook.clean().with("layers", "A2,aqueous,lower", "A2,aqueous,upper"), "A2");
        assertEquals(PositionCheck.CONTRADICTS, identity.position());
    }

    @Test
    void heavyLayerLabelledAqueousIsSwapped() throws Exception {
        LayerIdentity identity = identity(dichloromethane("1.327").with("layers", "34,97.63", "34,108.01"), "A1");
        assertEquals(Verdict.SWAPPED, identity.verdict());
    }

    @Test
    void twoLayersTakenForEachOtherAreOneFinding() throws Exception {
        // O1 at 1.00 g/mL and A1 at 1.32 g/mL after water under dichloromethane: both labels are wrong, by one cause.
        List<Finding> swapped = dichloromethane("1.327")
                .with("layers", "34,97.63", "34,108.01")
                .plus("layers", "X1,O1,organic,upper,E-03,60,100.07,40.07,,,used up")
                .findings(folder, "layers-swapped");
        assertEquals(1, swapped.size());
        assertTrue(
                Wording.POINT.of(swapped.get(0).seen()).contains("layer A1 is recorded as aqueous"),
                Wording.POINT.of(swapped.get(0).seen()));
        assertTrue(
                Wording.POINT.of(swapped.get(0).seen()).contains("layer O1 is recorded as organic"),
                Wording.POINT.of(swapped.get(0).seen()));
    }

    @Test
    void solventDensityEnteredAsOneLeavesNothingToTellBy() throws Exception {
        LayerIdentity identity = identity(dichloromethane("1.0").with("layers", "34,97.63", "34,108.01"), "A1");
        assertEquals(Verdict.CANNOT_TELL, identity.verdict());
    }

    @Test
    void densityThatFitsNeitherPhaseCannotTell() throws Exception {
        LayerIdentity identity = identity(ExampleBook.clean().with("layers", "34,97.63", "34,139.63"), "A1");
        assertEquals(Verdict.CANNOT_TELL, identity.verdict());
    }

    @Test
    void layerWithoutVolumeIsNotMeasured() throws Exception {
        LayerIdentity identity = identity(ExampleBook.clean().with("layers", "E-02,21,85.02", "E-02,,85.02"), "A2");
        assertEquals(Verdict.NOT_MEASURED, identity.verdict());
    }

    @Test
    void pairThatContradictsItselfCannotTell() throws Exception {
        LayerIdentity identity = identity(
                dichloromethane("1.327")
                        .with("layers", "34,97.63", "34,108.01")
                        .plus("layers", "X1,O1,organic,upper,E-03,60,119.70,40.07,,,used up"),
                "A1");
        assertEquals(Verdict.CANNOT_TELL, identity.verdict());
    }

    @Test
    void cakesAndDistillatesHaveNoIdentity() throws Exception {
        assertTrue(ExampleBook.clean()
                .review(folder)
                .runs()
                .get(0)
                .tally()
                .identity("K1")
                .isEmpty());
    }
}
