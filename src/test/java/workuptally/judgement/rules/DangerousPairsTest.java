package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.view.wording.Wording;

/** Pairs that must be named before the start. The pairs are those of lists of incompatible chemicals; the words are our own. */
class DangerousPairsTest {
    private static SmallBook planned(String... charges) {
        SmallBook book = SmallBook.reaction().first("runs", "Status", "planned");
        for (String charge : charges) {
            book.row("charges", "Material", charge, "Role", "reagent", "Planned amount", "2", "Planned unit", "g");
        }
        return book;
    }

    private static SmallBook washed(SmallBook book, String material) {
        return book.row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", material)
                .but("workup", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
    }

    private static List<Finding> of(SmallBook book, FindingCode code) {
        return book.reviewOfRun().findings().stream()
                .filter(f -> f.code() == code)
                .toList();
    }

    @Test
    void arseniteAndZincAreNamedWhereAcidComesToThem() {
        List<Finding> found =
                of(washed(planned("sodium arsenite", "zinc dust"), "2 M HCl"), FindingCode.MATERIALS_MUST_NOT_MEET);
        assertEquals(1, found.size());
        assertEquals(Severity.STOP, found.get(0).severity());
        assertTrue(
                Wording.POINT.of(found.get(0).seen()).startsWith("step 1: sodium arsenite meets zinc dust: arsine"),
                Wording.POINT.of(found.get(0).seen()));
    }

    @Test
    void arseniteAndZincWithoutAcidAreNoMeeting() {
        SmallBook book = washed(planned("sodium arsenite", "zinc dust"), "water");
        assertEquals(List.of(), of(book, FindingCode.MATERIALS_MUST_NOT_MEET));
    }

    @ParameterizedTest
    @CsvSource({
        "sodium chlorate, sucrose, CHARGED_TOGETHER",
        "dichloromethane, N2O4, CHARGED_TOGETHER",
        "potassium permanganate, starch, CHARGED_TOGETHER",
        "chromium trioxide, acetic anhydride, CHARGED_TOGETHER",
        "dimethylamine hydrochloride, sodium nitrite, CHARGED_TOGETHER"
    })
    void chargesThatMustNotMeetAreNamed(String one, String other, FindingCode code) {
        assertFalse(of(planned(one, other), code).isEmpty());
    }

    @Test
    void diazoniumIsNamedWhereIodideIsAdded() {
        assertEquals(
                1,
                of(
                                washed(planned("benzenediazonium tetrafluoroborate"), "1 M potassium iodide"),
                                FindingCode.CONTROLLED_MEETING)
                        .size());
    }

    @ParameterizedTest
    @CsvSource({"base, C10H15N, 1", "neutral, C10H15N, 0", "base, C10H16O, 0"})
    void ownProductThatIsABaseWithNitrogenIsAnAmineForBleach(String character, String formula, int found) {
        SmallBook book = planned()
                .first("products", "Formula", formula)
                .first("products", "Molar mass", "")
                .first("products", "Character", character);
        assertEquals(
                found,
                of(washed(book, "5 % NaOCl"), FindingCode.MATERIALS_MUST_NOT_MEET)
                        .size());
    }

    @ParameterizedTest
    @CsvSource({
        "perchloric acid 70 %, ethanol, MATERIALS_MUST_NOT_MEET",
        "perchloric acid 70 %, DMSO, MATERIALS_MUST_NOT_MEET",
        "silver nitrate, 25 % ammonia, CONTROLLED_MEETING",
        "dimethyl sulfate, conc. ammonia, CONTROLLED_MEETING"
    })
    void whatMustNotMeetInTheFlaskIsNamed(String charged, String added, FindingCode code) {
        assertFalse(of(washed(planned(charged), added), code).isEmpty());
    }

    /** Swern, activation by anhydride and Parikh-Doering: reactions of the trade, asked about alike whatever the role of DMSO. Common practice. */
    @ParameterizedTest
    @CsvSource({
        "oxalyl chloride, reagent, -60 °C",
        "oxalyl chloride, solvent, -60 °C",
        "trifluoroacetic anhydride, solvent, -50 °C",
        "trifluoroacetic anhydride, reagent, -50 °C",
        "sulfur trioxide pyridine complex, solvent, 0 to 25 °C",
        "SO3·pyridine, reagent, 0 to 25 °C"
    })
    void activatedDmsoIsAskedAboutWhateverItsRole(String activator, String role, String temperature) {
        SmallBook book = planned(activator)
                .row("charges", "Material", "DMSO", "Role", role, "Planned amount", "10", "Planned unit", "mL");
        List<Finding> asked = of(book, FindingCode.CHARGED_TOGETHER);
        assertEquals(1, asked.size());
        assertEquals(Severity.CHECK, asked.get(0).severity());
        String words = Wording.POINT.of(asked.get(0).seen())
                + Wording.POINT.of(asked.get(0).expected());
        assertTrue(words.contains(temperature) && words.contains("vented"), words);
        assertEquals(activator.startsWith("trifluoro"), words.contains("trifluoro"), words);
        assertEquals(List.of(), of(book, FindingCode.MATERIALS_MUST_NOT_MEET));
    }

    @Test
    void dmsoOntoWhatActivatesItInAWorkupIsStillAStop() {
        assertEquals(
                1,
                of(washed(planned("oxalyl chloride"), "DMSO"), FindingCode.MATERIALS_MUST_NOT_MEET)
                        .size());
    }

    @Test
    void dilutePerchloricAcidIsAnAcid() {
        assertEquals(
                List.of(), of(washed(planned("ethanol"), "1 M perchloric acid"), FindingCode.MATERIALS_MUST_NOT_MEET));
    }

    @Test
    void ascorbateOfAClickReactionIsNoStrongAcidForTheAzide() {
        SmallBook book = planned("benzyl azide", "sodium ascorbate");
        assertEquals(List.of(), of(book, FindingCode.CHARGED_TOGETHER));
        assertEquals(List.of(), of(book, FindingCode.MATERIALS_MUST_NOT_MEET));
    }

    /** 2 g of sodium hydride 60 % are 50 mmol; 50 mmol of hydrogen are 1.2 L at 20 °C (ideal gas). */
    @Test
    void gasOfAListedHydrideNeedsNoFormula() {
        SmallBook book = SmallBook.reaction()
                .row(
                        "charges",
                        "Material",
                        "sodium hydride 60 %",
                        "Role",
                        "reagent",
                        "Actual amount",
                        "2.00",
                        "Actual unit",
                        "g");
        Finding gas = of(washed(book, "water"), FindingCode.GAS_EXPECTED).get(0);
        String seen = Wording.POINT.of(gas.seen());
        assertTrue(seen.contains("50 mmol H₂, 1.20 L"), seen);
    }

    /** Oxalyl chloride and water give hydrogen chloride twice, and both oxides of carbon: one note, 100 mmol of it. */
    @Test
    void gasesOfOneQuenchAreToldOnce() {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "oxalyl chloride", "Role", "reagent", "Actual amount", "100")
                .but("charges", "Actual unit", "mmol");
        List<Finding> gases = of(washed(book, "water"), FindingCode.GAS_EXPECTED);
        assertEquals(1, gases.size());
        String seen = Wording.POINT.of(gases.get(0).seen());
        assertTrue(seen.contains("200 mmol HCl"), seen);
        assertTrue(seen.contains("; 100 mmol CO, "), seen);
        assertTrue(seen.contains("; 100 mmol CO₂, "), seen);
        assertTrue(!seen.contains("less 0"), seen);
    }

    @Test
    void aMaterialJudgedByItsNameAloneSaysSo() {
        Finding unlisted = of(planned("mercury(II) nitrate"), FindingCode.MATERIAL_UNLISTED)
                .get(0);
        String seen = Wording.POINT.of(unlisted.seen());
        assertTrue(seen.contains("judged by its name alone, as nitrate, heavy metal"), seen);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", "n/a", "pot", "RM"})
    void leavingOutWhereAStepStartsHidesNothing(String from) {
        SmallBook book = washed(planned("sodium cyanide"), "2 M HCl").but("workup", "From", from);
        assertEquals(1, of(book, FindingCode.MATERIALS_MUST_NOT_MEET).size());
        boolean said = !of(book, FindingCode.STEP_SOURCE_MISSING).isEmpty()
                || !of(book, FindingCode.LAYER_UNKNOWN_SOURCE).isEmpty();
        assertEquals(!from.equals("RM"), said);
    }

    @Test
    void aStepThatNamesNoMaterialIsSaid() {
        List<Finding> found = of(washed(planned("sodium cyanide"), ""), FindingCode.STEP_MATERIAL_UNKNOWN);
        assertEquals(1, found.size());
        assertTrue(Wording.POINT.of(found.get(0).seen()).startsWith("no material is named in step 1"));
    }
}
