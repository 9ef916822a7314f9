package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

/** What portions may hold after the steps, by the common practice that {@link PortionContents} states. */
class PortionContentsTest {
    /** The first material of a class that a portion may still hold. */
    private static Optional<Present> holding(Meetings meetings, String label, String materialClass) {
        return meetings.in(label).stream().filter(p -> p.is(materialClass)).findFirst();
    }

    private static SmallBook charged(String... materials) {
        SmallBook book = SmallBook.reaction();
        for (String material : materials) {
            book.row("charges", "Material", material, "Role", "reagent", "Actual amount", "20", "Actual unit", "mmol");
        }
        return book;
    }

    private static SmallBook step(
            SmallBook book,
            String number,
            String operation,
            String from,
            String material,
            String organic,
            String aqueous) {
        return book.row("workup", "Step", number, "Operation", operation, "From", from, "Material", material)
                .but("workup", "Volume", "50")
                .but("workup", "Gives organic", organic)
                .but("workup", "Gives aqueous", aqueous);
    }

    private static SmallBook into(
            SmallBook book, String number, String operation, String from, String material, String other) {
        return book.row("workup", "Step", number, "Operation", operation, "From", from, "Material", material)
                .but("workup", "Volume", material.isEmpty() ? "" : "50")
                .but("workup", "Gives other", other);
    }

    private static List<String> names(SmallBook book, String label) {
        return book.tally().evidence().meetings().in(label).stream()
                .map(Present::name)
                .toList();
    }

    private static boolean holds(SmallBook book, String label, String name) {
        return names(book, label).contains(name);
    }

    @Test
    void saltsFollowTheWaterAndAllElseTheOrganicPhase() {
        SmallBook book = charged("sodium chloride", "toluene", "acetic acid", "copper(I) iodide", "benzylamine");
        step(book, "1", "wash", "RM", "water", "O1", "A1");
        assertTrue(names(book, "A1").containsAll(List.of("sodium chloride", "water")));
        assertFalse(holds(book, "A1", "toluene"));
        assertFalse(holds(book, "O1", "sodium chloride"));
        assertTrue(names(book, "O1").containsAll(List.of("toluene", "benzylamine")));
        // acids and heavy metals go both ways
        assertTrue(holds(book, "O1", "acetic acid") && holds(book, "A1", "acetic acid"));
        assertTrue(holds(book, "O1", "copper(I) iodide") && holds(book, "A1", "copper(I) iodide"));
    }

    @ParameterizedTest
    @CsvSource({"combine", "dry", "filter", "concentrate"})
    void whatIsNoContactHoldsAllOfIt(String operation) {
        SmallBook book = charged("sodium chloride", "toluene");
        step(book, "1", operation, "RM", "", "O1", "A1");
        assertTrue(names(book, "O1").containsAll(List.of("sodium chloride", "toluene")));
        assertTrue(names(book, "A1").containsAll(List.of("sodium chloride", "toluene")));
    }

    @Test
    void dilutedUnderItsOwnLabelNothingIsParted() {
        SmallBook book = charged("sodium chloride", "toluene");
        step(book, "1", "dilute", "RM", "water", "", "RM");
        assertTrue(names(book, "RM").containsAll(List.of("sodium chloride", "toluene", "water")));
        SmallBook parted = charged("sodium chloride", "toluene");
        step(parted, "1", "dilute", "RM", "water", "O1", "RM");
        assertFalse(holds(parted, "RM", "toluene"));
        // a wash parts, whatever the labels
        SmallBook washed = charged("sodium chloride", "toluene");
        step(washed, "1", "wash", "RM", "water", "RM", "");
        assertFalse(holds(washed, "RM", "sodium chloride"));
    }

    @Test
    void aRagHoldsEverythingAndAStepWithoutLabelsLeavesItWhereItWas() {
        SmallBook book = charged("sodium chloride", "toluene");
        step(book, "1", "wash", "RM", "water", "O1", "A1").but("workup", "Gives other", "R1");
        assertTrue(names(book, "R1").containsAll(List.of("sodium chloride", "toluene", "water")));
        SmallBook without = charged("sodium chloride", "toluene");
        step(without, "1", "wash", "RM", "water", "", "");
        assertTrue(names(without, "RM").containsAll(List.of("sodium chloride", "toluene", "water")));
    }

    @Test
    void aDistillateHoldsSolventsAlone() {
        SmallBook book = charged("sodium chloride", "toluene");
        into(book, "1", "concentrate", "RM", "", "D1+B1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "20", "Status", "to reuse")
                .row("layers", "Layer", "B1", "Phase", "organic", "Net", "20", "Status", "kept");
        assertEquals(List.of("toluene"), names(book, "D1"));
        assertTrue(holds(book, "B1", "sodium chloride"));
    }

    @Test
    void aPortionThatIsGivenTwiceHoldsBoth() {
        SmallBook book = charged("sodium chloride", "toluene");
        step(book, "1", "wash", "RM", "water", "O1", "A1");
        step(book, "2", "wash", "O1", "1 M HCl", "O2", "A1");
        assertTrue(names(book, "A1").containsAll(List.of("sodium chloride", "1 M HCl")));
    }

    @ParameterizedTest
    @CsvSource({
        // operation, pH after, acid still there after base
        "wash, '', false",
        "quench, '', false",
        "back extract, '', false",
        "basify, '', false",
        "extract, '', true",
        "acidify, '', true",
        "wash, 9, false",
        "extract, 9, false",
        "wash, 5, true",
        "wash, 7, true",
        "extract, 7.1, false"
    })
    void baseEndsAnAcidWhereThePhOrTheOperationSaysSo(String operation, String pH, boolean there) {
        SmallBook book = charged("hydrogen chloride");
        step(book, "1", operation, "RM", "1 M NaOH", "O1", "A1").but("workup", "pH after", pH);
        assertEquals(there, holds(book, "A1", "hydrogen chloride"));
        assertTrue(holds(book, "A1", "1 M NaOH") || pH.equals("5"));
    }

    @ParameterizedTest
    @CsvSource({
        "wash, '', false",
        "quench, '', false",
        "back extract, '', false",
        "acidify, '', false",
        "extract, '', true",
        "basify, '', true",
        "wash, 3, false",
        "extract, 3, false",
        "wash, 9, true",
        "wash, 7, true",
        "extract, 6.9, false"
    })
    void acidEndsABaseWhereThePhOrTheOperationSaysSo(String operation, String pH, boolean there) {
        SmallBook book = charged("sodium carbonate");
        step(book, "1", operation, "RM", "1 M HCl", "O1", "A1").but("workup", "pH after", pH);
        assertEquals(there, holds(book, "A1", "sodium carbonate"));
    }

    @Test
    void anAmmoniumSaltAnAmineAndWhatPersistsOutlastAnAcid() {
        SmallBook book = charged("ammonium carbonate", "triethylamine", "sodium azide", "sodium acetate");
        step(book, "1", "wash", "RM", "1 M HCl", "O1", "A1").but("workup", "pH after", "2");
        assertTrue(holds(book, "O1", "triethylamine"));
        assertTrue(holds(book, "A1", "sodium azide"));
        // water alone is no acid
        SmallBook water = charged("sodium carbonate");
        step(water, "1", "wash", "RM", "water", "O1", "A1");
        assertTrue(holds(water, "A1", "sodium carbonate"));
    }

    @Test
    void waterEndsAHydrideAndTolueneDoesNot() {
        SmallBook water = charged("sodium hydride");
        step(water, "1", "quench", "RM", "water", "O1", "A1");
        assertFalse(holds(water, "O1", "sodium hydride") || holds(water, "A1", "sodium hydride"));
        SmallBook toluene = charged("sodium hydride");
        into(toluene, "1", "dilute", "RM", "toluene", "O1");
        assertTrue(holds(toluene, "O1", "sodium hydride"));
    }

    @Test
    void waterLeavesTheAzideOfASilylAzide() {
        SmallBook book = charged("TMSN3");
        step(book, "1", "quench", "RM", "water", "O1", "A1");
        Meetings meetings = book.tally().evidence().meetings();
        assertTrue(holding(meetings, "A1", "azide").isPresent());
        Present left = holding(meetings, "A1", "azide").orElseThrow();
        assertFalse(left.is("water-reactive"));
    }

    @ParameterizedTest
    @CsvSource({"negative, false", "positive, true", "not done, true", "'', true"})
    void onlyANegativeTestEndsAnOxidantThatWasCharged(String test, boolean there) {
        SmallBook book = charged("mCPBA");
        step(book, "1", "quench", "RM", "10 % Na2S2O3", "O1", "A1").but("workup", "Quench test", test);
        assertEquals(there, holds(book, "O1", "mCPBA"));
    }

    @Test
    void aTestIsAboutWhatWasChargedAndNotAboutWhatQuenchesIt() {
        SmallBook book = charged("S-thing");
        step(book, "1", "quench", "RM", "bleach", "O1", "A1").but("workup", "Quench test", "negative");
        assertTrue(holds(book, "A1", "bleach"));
    }

    @Test
    void aTraceIsWashedOutByFreshLiquidOfItsOwnPhase() {
        SmallBook book = charged("sodium azide");
        step(book, "1", "extract", "RM", "toluene", "O1", "A1");
        step(book, "2", "extract", "O1", "toluene", "O2", "A2");
        step(book, "3", "wash", "O1", "water", "O3", "A3");
        Meetings meetings = book.tally().evidence().meetings();
        assertEquals(
                Present.Share.MAIN,
                holding(meetings, "A1", "azide").orElseThrow().share());
        assertEquals(
                Present.Share.TRACE,
                holding(meetings, "O1", "azide").orElseThrow().share());
        assertTrue(holding(meetings, "O2", "azide").isPresent());
        assertTrue(holding(meetings, "O3", "azide").isEmpty());
        // what is added fresh leaves no trace in the other phase at once
        SmallBook added = charged("toluene");
        step(added, "1", "wash", "RM", "sodium azide", "O1", "A1");
        assertTrue(holding(added.tally().evidence().meetings(), "O1", "azide").isEmpty());
    }

    @Test
    void aSaltInWaterBringsItsWaterAndASolutionInASolventItsSolvent() {
        SmallBook salt = charged("toluene");
        step(salt, "1", "wash", "RM", "sodium carbonate", "O1", "A1");
        assertTrue(holds(salt, "A1", "water"));
        SmallBook ether = charged("toluene");
        into(ether, "1", "acidify", "RM", "2 M HCl in ether", "O1");
        assertFalse(holds(ether, "O1", "water"));
        SmallBook unknown = charged("toluene");
        into(unknown, "1", "combine", "RM", "secret brew", "O1");
        assertFalse(holds(unknown, "O1", "water"));
        SmallBook powder = charged("toluene");
        into(powder, "1", "combine", "RM", "sodium carbonate", "O1")
                .but("workup", "Volume", "")
                .but("workup", "Mass", "5");
        assertFalse(holds(powder, "O1", "water"));
        SmallBook water = charged("toluene");
        step(water, "1", "wash", "RM", "water", "O1", "A1");
        assertEquals(1, names(water, "A1").stream().filter("water"::equals).count());
    }

    @ParameterizedTest
    @CsvSource({"sulfuric acid, 18, true", "sulfuric acid, 0.5, false", "conc. sulfuric acid, 0.5, true"})
    void aStrengthInItsOwnCellTellsWhatAnAcidIs(String material, String molarity, boolean concentrated) {
        SmallBook book = charged("acetone");
        into(book, "1", "combine", "RM", material, "O1").but("workup", "Molarity", molarity);
        assertEquals(
                concentrated,
                book.tally().evidence().meetings().list().stream()
                        .anyMatch(m -> m.pair().key().contains("conc-sulfuric")));
        SmallBook charge = charged(material).but("charges", "Molarity", molarity);
        assertEquals(
                concentrated,
                charge.tally().evidence().meetings().in("RM").stream().anyMatch(p -> p.is("conc-sulfuric")));
    }

    @Test
    void aSolventIsOneByItsRoleElseByTheTable() {
        SmallBook book = charged("DMSO", "toluene")
                .but("charges", "Role", "solvent")
                .row("charges", "Material", "acetone", "Role", "", "Actual amount", "20", "Actual unit", "mL");
        List<Present> all = book.tally().evidence().meetings().in("RM");
        assertEquals(
                List.of("toluene", "acetone"),
                all.stream().filter(Present::solvent).map(Present::name).toList());
    }

    @Test
    void aLayerHoldsWhatItsRowStates() {
        SmallBook book = charged("toluene")
                .row("layers", "Layer", "X1", "Phase", "organic", "Net", "50", "Status", "kept")
                .but("layers", "Composition", "acetone 60 %; methanol 40 %");
        assertEquals(List.of("acetone", "methanol"), names(book, "X1"));
    }
}
