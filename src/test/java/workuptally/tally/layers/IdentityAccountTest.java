package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Layer;
import workuptally.tally.layers.LayerIdentity.PositionCheck;
import workuptally.tally.layers.LayerIdentity.Verdict;

/**
 * 10 g of S in 100 mL of toluene, washed with 100 mL of water. Toluene 0.8668 and −0.00090 per kelvin, water 0.9982 g/mL (CRC Handbook,
 * Perry); S counts 1.2 g/mL in the toluene and 2.5 g/mL in the water (common practice). Each takes up less than a thousandth of the other.
 */
class IdentityAccountTest {
    private static final double DISSOLVED = 0.001;

    private static SmallBook washed(String organicNet, String aqueousNet) {
        return washed(SmallBook.reaction(), organicNet, aqueousNet);
    }

    private static SmallBook washed(SmallBook charged, String organicNet, String aqueousNet) {
        return charged.row(
                        "charges",
                        "Material",
                        "toluene",
                        "Role",
                        "solvent",
                        "Actual amount",
                        "100",
                        "Actual unit",
                        "mL")
                .but("charges", "Density", "0.8668")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "100")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Net", organicNet)
                .but("layers", "Status", "kept")
                .but("layers", "Temperature", "")
                .but("layers", "Position", "")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "100", "Net", aqueousNet)
                .but("layers", "Status", "kept");
    }

    private static List<LayerIdentity> all(SmallBook book) {
        FollowedRun run = FollowedRun.of(book);
        return new IdentityAccount(run.run(), run.substances(), run.flow())
                .of(run.tally().layers(), run.tally().amounts());
    }

    private static LayerIdentity of(SmallBook book, String label) {
        return all(book).stream()
                .filter(i -> i.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static List<Verdict> verdicts(SmallBook book) {
        return all(book).stream().map(LayerIdentity::verdict).toList();
    }

    @Test
    void aPhaseMayHoldTheSolutesOrNot() {
        LayerIdentity identity = of(washed("88.00", "101.00"), "O1");
        assertEquals(0.8668, identity.expectedOrganic().lowGramsPerMillilitre(), DISSOLVED);
        assertEquals(96.68 / (100 + 10 / 1.2), identity.expectedOrganic().highGramsPerMillilitre(), DISSOLVED);
        assertEquals(0.9982, identity.expectedAqueous().lowGramsPerMillilitre(), DISSOLVED);
        assertEquals(109.82 / (100 + 10 / 2.5), identity.expectedAqueous().highGramsPerMillilitre(), DISSOLVED);
        FollowedRun run = FollowedRun.of(washed("88.00", "101.00"));
        PhaseDensities densities = new IdentityAccount(run.run(), run.substances(), run.flow())
                .densities(run.run().steps().get(0), run.tally().amounts())
                .orElseThrow();
        assertEquals(identity.expectedOrganic(), densities.organic());
        assertEquals(identity.expectedAqueous(), densities.aqueous());
    }

    @Test
    void onlyOrganicSolidsAreSolutesOfAnUnknownPhase() {
        // a salt is in the water and a solvent in its phase
        SmallBook salt = SmallBook.reaction()
                .first("charges", "Formula", "NaCl")
                .first("charges", "Material", "sodium chloride");
        LayerIdentity identity = of(washed(salt, "88.00", "101.00"), "O1");
        assertEquals(0.8668, identity.expectedOrganic().highGramsPerMillilitre(), DISSOLVED);
        assertEquals(109.82 / (100 + 10 / 2.5), identity.expectedAqueous().lowGramsPerMillilitre(), DISSOLVED);
        // of 10 g at 40 % only what it is named for is dissolved
        LayerIdentity part = of(washed(SmallBook.reaction().first("charges", "Assay", "60"), "88.00", "101.00"), "O1");
        assertEquals(92.68 / (100 + 6 / 1.2), part.expectedOrganic().highGramsPerMillilitre(), DISSOLVED);
    }

    @ParameterizedTest
    @CsvSource({
        "88.00, 101.00, CONSISTENT, CONSISTENT",
        "101.00, 88.00, SWAPPED, SWAPPED",
        // one for the other alone is not believed
        "101.00, 101.00, CANNOT_TELL, CONSISTENT",
        "88.00, 88.00, CONSISTENT, CANNOT_TELL",
        // neither fits
        "150.00, 101.00, CANNOT_TELL, CONSISTENT",
        "101.00, 150.00, CANNOT_TELL, CANNOT_TELL",
        "101.00, '', SWAPPED, NOT_MEASURED",
        "'', 101.00, NOT_MEASURED, CONSISTENT"
    })
    void aDensityTellsWhichPhaseItFits(String organicNet, String aqueousNet, Verdict organic, Verdict aqueous) {
        assertEquals(List.of(organic, aqueous), verdicts(washed(organicNet, aqueousNet)));
    }

    @Test
    void phasesThatAreTooAlikeTellNothing() {
        // 0.97 with S up to 0.985, and water from 0.998
        SmallBook alike = washed("97.00", "101.00").but("charges", "Density", "0.97");
        assertEquals(List.of(Verdict.CANNOT_TELL, Verdict.CANNOT_TELL), verdicts(alike));
        // a small volume is read too roughly: 1.00 ± 0.2 mL of 0.88 g
        SmallBook rough =
                washed("0.88", "101.00").first("layers", "Volume", "1.0").first("layers", "Volume uncertainty", "0.2");
        assertEquals(Verdict.CANNOT_TELL, verdicts(rough).get(0));
    }

    @Test
    void whereALiquidOfUnknownAmountWentInAFitIsAGuess() {
        SmallBook contact = washed(
                SmallBook.reaction()
                        .row("charges", "Material", "water", "Role", "solvent", "Actual amount", "100")
                        .but("charges", "Actual unit", "mL"),
                "88.00",
                "101.00");
        assertEquals(List.of(Verdict.CONSISTENT, Verdict.CONSISTENT), verdicts(contact));
        assertEquals(List.of(Verdict.CANNOT_TELL, Verdict.CANNOT_TELL), verdicts(contact.but("workup", "Volume", "")));
        assertEquals(List.of(Verdict.CANNOT_TELL, Verdict.CANNOT_TELL), verdicts(contact.but("workup", "Volume", "0")));
        assertEquals(
                List.of(Verdict.CONSISTENT, Verdict.CONSISTENT),
                verdicts(contact.but("workup", "Volume", "").but("workup", "Mass", "99.8")));
        // a swap is told all the same
        SmallBook swapped = washed("101.00", "88.00")
                .row("charges", "Material", "MTBE", "Role", "solvent", "Actual amount", "", "Actual unit", "mL");
        assertEquals(List.of(Verdict.SWAPPED, Verdict.SWAPPED), verdicts(swapped));
    }

    @Test
    void aSolventOfTheReactionWithoutAnAmountIsSuchALiquid() {
        SmallBook book = washed("88.00", "101.00")
                .row("charges", "Material", "MTBE", "Role", "solvent", "Actual amount", "", "Actual unit", "mL");
        assertEquals(List.of(Verdict.CANNOT_TELL, Verdict.CANNOT_TELL), verdicts(book));
        // a reagent without one is none
        assertEquals(
                List.of(Verdict.CONSISTENT, Verdict.CONSISTENT),
                verdicts(book.but("charges", "Material", "benzocaine").but("charges", "Role", "reagent")));
    }

    /** O1 and A1 of step 1, washed again in step 3; what step 2 adds goes into the layer named. */
    private static List<Verdict> afterStep(String material, String volume, String into) {
        SmallBook book = washed("88.00", "101.00")
                .row("workup", "Step", "2", "Operation", "dilute", "From", into, "Material", material)
                .but("workup", "Volume", volume)
                .but("workup", "Gives other", into)
                .row("workup", "Step", "3", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "100")
                .but("workup", "Gives organic", "O3")
                .but("workup", "Gives aqueous", "A3")
                .row("layers", "Layer", "O3", "Phase", "organic", "Volume", "100", "Net", "88.00", "Status", "kept")
                .row("layers", "Layer", "A3", "Phase", "aqueous", "Volume", "100", "Net", "100.00", "Status", "kept");
        return verdicts(book);
    }

    @Test
    void aStepBeforeTheContactCountsWhereItsPortionsCameFrom() {
        Verdict guess = Verdict.CANNOT_TELL;
        Verdict fits = Verdict.CONSISTENT;
        assertEquals(List.of(fits, fits, guess, guess), afterStep("toluene", "", "O1"));
        // not into the layer beside it, and not before the step
        assertEquals(List.of(fits, fits, fits, fits), afterStep("toluene", "", "A1"));
        assertEquals(List.of(fits, fits, fits, fits), afterStep("toluene", "1", "O1"));
        assertEquals(List.of(fits, fits, fits, fits), afterStep("", "", "O1"));
    }

    @Test
    void aTemperatureMovesWhatIsExpected() {
        // 15 K warmer: 0.8668 − 15 × 0.0009 of toluene
        LayerIdentity warm = of(washed("88.00", "101.00").first("layers", "Temperature", "35"), "O1");
        assertEquals(0.8668 - 0.0135, warm.expectedOrganic().lowGramsPerMillilitre(), DISSOLVED);
        // beyond the reach of the tables, as at 20 °C
        LayerIdentity hot = of(washed("88.00", "101.00").first("layers", "Temperature", "90"), "O1");
        assertEquals(0.8668, hot.expectedOrganic().lowGramsPerMillilitre(), DISSOLVED);
    }

    @Test
    void onlyRecordedLayersOfTheTwoPhasesHaveAnIdentity() {
        assertEquals(
                List.of("O1", "A1"),
                all(washed("88.00", "101.00")).stream()
                        .map(LayerIdentity::label)
                        .toList());
        assertEquals(
                List.of("A1"),
                all(washed("88.00", "101.00").first("layers", "Phase", "rag")).stream()
                        .map(LayerIdentity::label)
                        .toList());
        SmallBook goesOn = washed("88.00", "101.00").but("workup", "From", "RM+O1");
        assertEquals(
                List.of("A1"), all(goesOn).stream().map(LayerIdentity::label).toList());
        SmallBook other =
                washed("88.00", "101.00").but("workup", "Gives aqueous", "").but("workup", "Gives other", "A1");
        assertEquals(
                List.of("O1"), all(other).stream().map(LayerIdentity::label).toList());
        // without a liquid in one of the phases nothing is expected
        assertEquals(List.of(), all(washed("88.00", "101.00").but("workup", "Material", "toluene")));
    }

    @ParameterizedTest
    @CsvSource({
        "upper, lower, AGREES",
        "lower, upper, CONTRADICTS",
        "middle, lower, OPEN",
        "'', lower, OPEN",
        // by what is expected, where the other one has no position
        "upper, '', AGREES",
        "lower, '', CONTRADICTS"
    })
    void theDenserLayerIsBelow(String organic, String aqueous, PositionCheck check) {
        SmallBook book =
                washed("88.00", "101.00").first("layers", "Position", organic).but("layers", "Position", aqueous);
        assertEquals(check, of(book, "O1").position());
    }

    @Test
    void twoMeasuredDensitiesTellWithoutAnyExpectation() {
        // neither fits its phase, but the one is denser than the other
        SmallBook book =
                washed("150.00", "140.00").first("layers", "Position", "lower").but("layers", "Position", "upper");
        assertEquals(PositionCheck.AGREES, of(book, "O1").position());
        assertEquals(PositionCheck.AGREES, of(book, "A1").position());
        assertEquals(Optional.of(Layer.Phase.ORGANIC), of(book, "O1").lower());
        SmallBook swapped = washed("101.00", "88.00").first("layers", "Position", "lower");
        assertEquals(PositionCheck.AGREES, of(swapped, "O1").position());
        // alike within their uncertainty
        SmallBook alike =
                washed("150.00", "150.10").first("layers", "Position", "lower").but("layers", "Position", "upper");
        assertEquals(PositionCheck.OPEN, of(alike, "O1").position());
        assertEquals(Optional.empty(), of(alike, "O1").lower());
    }

    @Test
    void theLowerPhaseIsThatOfTheDenserLayerElseOfTheDenserExpectation() {
        assertEquals(
                Optional.of(Layer.Phase.AQUEOUS),
                of(washed("88.00", "101.00"), "O1").lower());
        assertEquals(
                Optional.of(Layer.Phase.ORGANIC),
                of(washed("101.00", "88.00"), "O1").lower());
        assertEquals(
                Optional.of(Layer.Phase.AQUEOUS), of(washed("88.00", ""), "O1").lower());
        SmallBook guess = washed("88.00", "")
                .row("charges", "Material", "MTBE", "Role", "solvent", "Actual amount", "", "Actual unit", "mL");
        assertTrue(of(guess, "O1").lower().isEmpty());
        assertTrue(of(washed("97.00", "").but("charges", "Density", "0.97"), "O1")
                .lower()
                .isEmpty());
    }

    @Test
    void saltsInHardlyAnyWaterHaveNoExpectedDensity() {
        // 40 g of a salt beside 5 mL of water: no sum of parts tells what such a phase weighs
        SmallBook book = washed(SmallBook.reaction(), "87.0", "99.5").but("workup", "Volume", "5");
        assertEquals(2, all(book).size());
        SmallBook salty = book.row("charges", "Material", "potassium carbonate", "Role", "base", "Formula", "K2CO3")
                .but("charges", "Actual amount", "40")
                .but("charges", "Actual unit", "g");
        assertEquals(List.of(), all(salty));
    }
}
