package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.hazards.MixtureStatements;

/** Cautions about operations. That ethers form peroxides and that bicarbonate gives gas with acid is common knowledge of the trade. */
class HazardNoteAccountTest {
    @TempDir
    Path folder;

    private List<HazardNote> notes(ExampleBook book) throws Exception {
        return book.review(folder).runs().get(0).hazards();
    }

    private static boolean speaksOf(List<HazardNote> notes, String subject, String caution) {
        return notes.stream()
                .anyMatch(n -> n.subject().contains(subject) && n.caution().contains(caution));
    }

    private static ExampleBook ether() {
        return ExampleBook.clean()
                .with("charges", "ethyl acetate,solvent,C4H8O2", "diethyl ether,solvent,C4H10O")
                .with("charges", "0.902", "0.713");
    }

    @Test
    void shakingWithEtherWarnsOfPressure() throws Exception {
        assertTrue(speaksOf(notes(ether()), "shaking with Diethyl ether, step", "vent"));
    }

    @Test
    void shakingWithEthylAcetateAtRoomTemperatureDoesNot() throws Exception {
        assertFalse(speaksOf(notes(ExampleBook.clean()), "shaking with", "vent"));
    }

    @Test
    void evaporatingEtherWarnsOfPeroxides() throws Exception {
        assertTrue(speaksOf(notes(ether()), "evaporating Diethyl ether (class B), step", "peroxides"));
    }

    /** Dichloromethane boils at 40 °C, toluene at 111 °C (common handbook values). */
    @ParameterizedTest
    @CsvSource({"35, false, true", "35, true, false", "19, false, false", "98, true, true"})
    void warmFunnelAndPeroxidesGoByTheSolventsOfTheStep(String celsius, boolean stripped, boolean told) {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "dichloromethane", "Role", "solvent", "Actual amount", "50")
                .but("charges", "Actual unit", "mL")
                .row("charges", "Material", "diethyl ether", "Role", "solvent", "Actual amount", "5")
                .but("charges", "Actual unit", "mL");
        if (stripped) {
            book.row("workup", "Step", "1", "Operation", "strip", "From", "RM", "Gives other", "RM+D1");
        }
        book.row("workup", "Step", "2", "Operation", "dilute", "From", "RM", "Material", "toluene", "Volume", "50")
                .but("workup", "Gives organic", "RM")
                .row("workup", "Step", "3", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Temperature", celsius)
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "4", "Operation", "concentrate", "From", "O1", "Gives other", "D2+C1");
        List<HazardNote> notes = book.reviewOfRun().hazards();
        assertEquals(told, speaksOf(notes, "step 3 at " + celsius, "not shaken"), notes.toString());
        // ether that was charged is taken off where it is: in step 1 where that strips it, else in step 4
        assertTrue(speaksOf(notes, "evaporating Diethyl ether", "peroxides"), notes.toString());
    }

    /** Harmonised statement of toluene: Regulation (EC) 1272/2008, Annex VI. It counts wherever the portion has it from. */
    @Test
    void whatACompositionNamesIsJudgedThoughTheRunNeverCharged() {
        RunReview run = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "concentrate", "From", "RM", "Gives other", "D1+C1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "87", "Status", "to reuse")
                .but("layers", "Composition", "toluene 97 %; water 3 %")
                .reviewOfRun();
        HazardNote toluene = run.hazards().stream()
                .filter(n -> n.subject().equals("Toluene"))
                .findFirst()
                .orElseThrow();
        assertTrue(toluene.statements().stream().anyMatch(s -> s.startsWith("H225")), toluene.toString());
        assertTrue(
                MixtureStatements.of(Map.of("toluene", 84.4, "water", 2.6), run.hazards(), List.of()).stream()
                        .anyMatch(s -> s.startsWith("Highly flammable")),
                run.hazards().toString());
    }

    @ParameterizedTest
    @CsvSource({
        "sodium azide, C7H7N3, true", // benzyl azide, 7 / 3 = 2.3
        "azidotrimethylsilane, C7H7N3, true",
        "sodium azide, C9H11N3O2, false", // 11 / 3 = 3.7
        "sodium azide, C8H9NO, false",
        "acetic anhydride, C7H7N3, false"
    })
    void productWithLittleCarbonForItsAzideIsPointedOut(String material, String formula, boolean told) {
        List<HazardNote> notes = SmallBook.reaction()
                .first("products", "Formula", formula)
                .first("products", "Molar mass", "")
                .row("charges", "Material", material, "Role", "reagent", "Actual amount", "1", "Actual unit", "g")
                .reviewOfRun()
                .hazards();
        assertEquals(told, speaksOf(notes, "product P", "If it keeps the azide"));
    }

    @Test
    void bicarbonateWashWarnsOfCarbonDioxide() throws Exception {
        ExampleBook book = ExampleBook.clean().with("workup", "water,1,30,,,0.998", "sat. NaHCO3,1,30,,1.1,1.061");
        assertTrue(speaksOf(notes(book), "step 1", "CO2"));
    }

    @Test
    void strongAcidWarnsOfHeat() throws Exception {
        ExampleBook book = ExampleBook.clean().plus("workup", "X1,7,acidify,A1,6 M HCl,1,2,,6,1.098,,,1.0,,,,,,A3,");
        assertTrue(speaksOf(notes(book), "step 7", "Heat"));
    }

    @Test
    void borohydrideWarnsOfItsQuench() throws Exception {
        ExampleBook book =
                ExampleBook.clean().plus("charges", "X1,sodium borohydride,reagent,NaBH4,37.83,,,,0.1,g,98,,,,");
        assertTrue(speaksOf(notes(book), "quench of sodium borohydride", "cold"));
    }

    @Test
    void lastingEmulsionIsNoted() throws Exception {
        ExampleBook book = ExampleBook.clean().with("workup", "density,none,O1", "density,persistent,O1");
        assertTrue(speaksOf(notes(book), "emulsion in step 1", "Swirl"));
    }

    @Test
    void azideAndDichloromethaneAreNamedTogether() throws Exception {
        ExampleBook book = ExampleBook.clean()
                .plus("charges", "X1,sodium azide,reagent,NaN3,65.01,,,,0.1,g,99,,,,")
                .plus("charges", "X1,dichloromethane,solvent,CH2Cl2,,,,,5,mL,,,,1.326,");
        assertTrue(speaksOf(notes(book), "sodium azide and dichloromethane", "never"));
    }

    /** Limits of the harmonised entries (Regulation (EC) 1272/2008, Annex VI, from memory); mass per cent of 1, 6 and 10 M by density tables. */
    @ParameterizedTest
    @CsvSource({
        "1 M HCl, Hydrochloric acid, '', below the classification limits",
        "10 % HCl, Hydrochloric acid, H315 H319 H335, 10.0 % by mass",
        "6 M HCl, Hydrochloric acid, H315 H319 H335, 19.9 % by mass",
        "conc. HCl, Hydrochloric acid, H314 H335, 37.0 % by mass",
        "hydrochloric acid, Hydrochloric acid, H335 H314, never onto cyanide",
        "HCl in dioxane, Hydrochloric acid, H335 H314, never onto cyanide",
        "4 M HCl in dioxane, Hydrochloric acid, H335 H314, never onto cyanide",
        "1 M NaOH, Sodium hydroxide, H314, 3.84 % by mass",
        "1 % NaOH, Sodium hydroxide, H315 H319, 1.00 % by mass",
        "1 M H2SO4, Sulfuric acid, H315 H319, 9.24 % by mass",
        "30 % hydrogen peroxide, Hydrogen peroxide, H332 H302 H272 H318, 30.0 % by mass",
        "'3,0 % H2O2', Hydrogen peroxide, H332 H302, 3.00 % by mass",
        "2 % NH3, Ammonia solution, H315 H319, 2.00 % by mass"
    })
    void statementsAreThoseOfTheStrengthWhereItIsKnown(String material, String subject, String codes, String caution)
            throws Exception {
        ExampleBook book = ExampleBook.clean().with("workup", "water,1,30,,,0.998", '"' + material + "\",1,30,,,1.05");
        HazardNote note = notes(book).stream()
                .filter(n -> n.ofMaterial() && n.subject().split(",")[0].equals(subject))
                .findFirst()
                .orElseThrow();
        assertEquals(
                codes == null ? "" : codes,
                note.statements().stream().map(s -> s.split(" ")[0]).collect(Collectors.joining(" ")));
        String words = note.subject() + ": " + note.caution();
        assertTrue(words.contains(caution), words);
    }

    @Test
    void concentratedAndDilutedStandBesideEachOther() throws Exception {
        ExampleBook book = ExampleBook.clean()
                .with("workup", "water,1,30,,,0.998", "1 M HCl,1,30,,,1.016")
                .plus("charges", "X1,conc. HCl,reagent,HCl,36.46,,,,0.1,g,37,,,,");
        assertEquals(
                2,
                notes(book).stream()
                        .filter(n -> n.subject().startsWith("Hydrochloric acid, "))
                        .count());
    }

    @Test
    void molarityOfTheStepTellsTheStrength() throws Exception {
        ExampleBook book = ExampleBook.clean().with("workup", "water,1,30,,,0.998", "HCl,1,30,,1,1.016");
        assertTrue(speaksOf(notes(book), "Hydrochloric acid, 3.59 % by mass", "usual care"));
    }

    @Test
    void molarityBesideASaturatedWashTakesNoNoteAway() throws Exception {
        ExampleBook book = ExampleBook.clean().with("workup", "water,1,30,,,0.998", "sat. NaHCO3,1,30,,1.1,1.061");
        assertTrue(speaksOf(notes(book), "Sodium hydrogencarbonate", "CO2"));
    }
}
