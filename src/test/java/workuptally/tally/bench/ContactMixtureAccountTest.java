package workuptally.tally.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/**
 * 100 mL of toluene (86.68 g) and 10 mL of another solvent, shaken with 50 mL of water. By the solvent table water takes up 0.052 % of
 * toluene and toluene 0.045 % of water (mass of the saturated phase), so that 49.91 g of water hold 0.02597 g of toluene, 0.02996 mL, and
 * 86.68 g of toluene 0.03902 g of water.
 */
class ContactMixtureAccountTest {
    private static final double WATER_GRAMS = 49.91;
    private static final double TOLUENE_IN_WATER_GRAMS = 0.02597;
    private static final double WATER_IN_TOLUENE_GRAMS = 0.03902;

    @Test
    void miscibleSolventIsAShareOfTheOrganicSolvents() {
        ContactMixture mixture = mixture(shaken("methanol", "7.914"));
        // 10 mL in 110 mL
        assertEquals(100 / 11.0, mixture.waterMisciblePercent(), 1e-3);
        assertEquals("methanol", mixture.waterMiscible());
    }

    @Test
    void miscibleSolventsAreNamedByTheAlphabet() {
        SmallBook book = shaken("tetrahydrofuran", "8.89");
        solvent(book, "methanol", "7.914");
        // 20 mL in 120 mL
        assertEquals(100 / 6.0, mixture(book).waterMisciblePercent(), 1e-3);
        assertEquals("methanol, tetrahydrofuran", mixture(book).waterMiscible());
    }

    @Test
    void solventsThatDoNotMixWithWaterAreNotCounted() {
        ContactMixture mixture = mixture(shaken("ethyl acetate", "9.00"));
        assertEquals(0, mixture.waterMisciblePercent(), 0);
        assertEquals("", mixture.waterMiscible());
        assertEquals(0, mixture.alcoholInAqueousPercent(), 0);
    }

    @Test
    void contactWithoutASolventHasNoShareOfIt() {
        SmallBook book = wash(SmallBook.reaction());
        assertEquals(0, mixture(book).waterMisciblePercent(), 0);
        assertEquals(0, mixture(book).organicMillilitres(), 0);
        assertEquals(50, mixture(book).waterMillilitres(), 1e-9);
    }

    @Test
    void massesOfThePhasesAreThatOfWhatWentIn() {
        ContactMixture mixture = mixture(shaken("methanol", "7.914"));
        // what is charged as solid is in neither: assays alone tell where it is
        assertEquals(86.68 + 7.914 + WATER_GRAMS, mixture.organicGrams() + mixture.aqueousGrams(), 1e-6);
        assertTrue(mixture.aqueousGrams() > WATER_GRAMS && mixture.aqueousGrams() < WATER_GRAMS + 7.914 + 0.1);
    }

    @Test
    void volumeThatGoesInIsTheSumOfTheLiquids() {
        // 10 g of dissolved S take up 10/1.2 = 8.33 mL beside the 160 mL
        assertEquals(160 + 10 / 1.2, mixture(shaken("methanol", "7.914")).inMillilitres(), 0.01);
    }

    @Test
    void solventAndWaterAreCountedInTheirOwnPhaseOnly() {
        ContactMixture mixture = mixture(shaken("methanol", "7.914"));
        assertEquals(100 - TOLUENE_IN_WATER_GRAMS / 0.8668, mixture.organicMillilitres(), 1e-3);
        assertEquals(50 * (1 - WATER_IN_TOLUENE_GRAMS / WATER_GRAMS), mixture.waterMillilitres(), 1e-3);
    }

    @Test
    void alcoholIsWhatTheAqueousPhaseHoldsBesideWaterAndToluene() {
        ContactMixture mixture = mixture(shaken("methanol", "7.914"));
        double alcohol = mixture.aqueousGrams() - (WATER_GRAMS - WATER_IN_TOLUENE_GRAMS) - TOLUENE_IN_WATER_GRAMS;
        assertTrue(alcohol > 5, () -> "most methanol goes with the water: " + alcohol);
        assertEquals(100 * alcohol / mixture.aqueousGrams(), mixture.alcoholInAqueousPercent(), 1e-3);
    }

    @Test
    void otherMiscibleSolventsAreNoAlcohol() {
        ContactMixture mixture = mixture(shaken("acetone", "7.902"));
        assertEquals(100 / 11.0, mixture.waterMisciblePercent(), 1e-3);
        assertEquals(0, mixture.alcoholInAqueousPercent(), 0);
    }

    @Test
    void volumesOfTheLayersAddUpWhereEachWasMeasured() {
        SmallBook book = shaken("methanol", "7.914")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "104")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "57");
        assertEquals(161, mixture(book).outMillilitres().orElseThrow(), 1e-9);
        assertEquals(
                OptionalDouble.empty(),
                mixture(book.but("layers", "Volume", "")).outMillilitres());
        assertEquals(
                OptionalDouble.empty(), mixture(shaken("methanol", "7.914")).outMillilitres());
    }

    @Test
    void contactThatGivesNoLabelHasNoVolumeOut() {
        SmallBook book =
                shaken("methanol", "7.914").but("workup", "Gives organic", "").but("workup", "Gives aqueous", "");
        assertEquals(OptionalDouble.empty(), mixture(book).outMillilitres());
    }

    @Test
    void everyContactIsListedAndNoOtherStep() {
        SmallBook book = shaken("methanol", "7.914")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "O1", "Gives other", "D1")
                .row("workup", "Step", "3", "Operation", "wash", "From", "A1", "Material", "toluene", "Volume", "20")
                .but("workup", "Gives organic", "O3")
                .but("workup", "Gives aqueous", "A3");
        assertEquals(
                List.of("1", "3"),
                mixtures(book).stream().map(m -> m.step().number()).toList());
    }

    private static ContactMixture mixture(SmallBook book) {
        return mixtures(book).get(0);
    }

    private static List<ContactMixture> mixtures(SmallBook book) {
        return book.tally().evidence().contactMixtures();
    }

    private static SmallBook shaken(String second, String grams) {
        SmallBook book = SmallBook.reaction();
        solvent(book, "toluene", "86.68");
        solvent(book, second, grams);
        return wash(book);
    }

    private static void solvent(SmallBook book, String name, String grams) {
        book.row("charges", "Material", name, "Role", "solvent", "Actual amount", grams, "Actual unit", "g");
    }

    private static SmallBook wash(SmallBook book) {
        return book.row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
    }
}
