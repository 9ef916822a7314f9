package workuptally.judgement.rules.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Severity;

/** A lot of a base of pKa 9 or an acid of pKa 4 that leaves the workup after one last step. */
class IsolatedAsIonTest {
    private static SmallBook book(String character, String operation, String pH) {
        return SmallBook.reaction()
                .but("products", "Character", character)
                .but("products", "Formula", "C13H19N")
                .but("products", "pKa", character.equals("base") ? "9" : "4")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", operation, "From", "O1", "Gives other", "M1")
                .but("workup", "pH after", pH)
                .row("workup", "Step", "3", "Operation", "filter", "From", "M1", "Gives other", "C1+L1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "M1", "Net", "18.0");
    }

    private static boolean asked(SmallBook book) {
        return book.reviewOfRun().findings().stream().anyMatch(f -> f.code() == FindingCode.ISOLATED_FORM_OPEN);
    }

    @ParameterizedTest
    @CsvSource({
        "base, acidify, , true",
        "base, basify, , false",
        "acid, basify, , true",
        "acid, acidify, , false",
        "base, dilute, 3, true",
        "base, dilute, 8.5, false",
        "acid, dilute, 11, true",
        "acid, acidify, 1, false",
        "neutral, acidify, 1, false"
    })
    void lastStepDecides(String character, String operation, String pH, boolean asked) {
        assertEquals(asked, asked(book(character, operation, pH == null ? "" : pH)));
    }

    @Test
    void saltThatIsNamedOrShownIsNotAskedAbout() {
        assertEquals(false, asked(book("base", "acidify", "").but("products", "Formula", "C13H20ClN")));
        assertEquals(false, asked(book("base", "acidify", "").but("products", "Formula", "C13H19N.HCl")));
        // chlorine that the substrate brings is no sign of a salt
        assertEquals(
                true,
                asked(book("base", "acidify", "")
                        .but("products", "Formula", "C13H18ClN")
                        .first("charges", "Formula", "C7H5ClO")));
    }

    @ParameterizedTest
    @CsvSource({
        "base, dilute, HCl (4 M in dioxane), true",
        "base, crystallise, oxalic acid, true",
        "base, dilute, ethanol, false",
        "acid, dilute, triethylamine, true",
        "acid, dilute, HCl (4 M in dioxane), false",
        "acid, dilute, sat. NaHCO3, true",
        "base, dilute, 1 M HCl, true"
    })
    void acidOrBaseByAnyOperationDecides(String character, String operation, String material, boolean asked) {
        SmallBook book = book(character, operation, "");
        assertEquals(asked, asked(withMaterial(book, material)));
    }

    @Test
    void phenolIsNoIonInHydrogencarbonate() {
        SmallBook phenol =
                book("acid", "dilute", "").but("products", "pKa", "10").but("products", "Formula", "C6H6O");
        assertEquals(false, asked(withMaterial(phenol, "sat. NaHCO3")));
        assertEquals(true, asked(withMaterial(phenol, "1 M NaOH")));
    }

    /** A base in acid water does not go into ethyl acetate by itself, nor an acid in hydrogencarbonate; between them it is set free. */
    @ParameterizedTest
    @CsvSource({
        "base, 10 % citric acid, , true",
        "base, 1 M HCl, , true",
        "base, 1 M HCl, 2 M NaOH, false",
        "acid, sat. NaHCO3, , true",
        "acid, sat. NaHCO3, 2 M HCl, false",
        "base, water, , false"
    })
    void ionThatIsExtractedStraightFromItsWaterIsAskedAbout(
            String character, String wash, String settledBy, boolean asked) {
        SmallBook book = SmallBook.reaction()
                .but("products", "Character", character)
                .but("products", "Formula", "C13H19N")
                .but("products", "pKa", character.equals("base") ? "9" : "4")
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", wash, "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "Q1")
                .row("workup", "Step", "2", "Operation", "dilute", "From", "Q1")
                .but("workup", "Material", settledBy == null ? "water" : settledBy)
                .but("workup", "Gives other", "Q2")
                .row("workup", "Step", "3", "Operation", "extract", "From", "Q2", "Material", "ethyl acetate")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O2", "Net", "18.0");
        assertEquals(asked, asked(book));
    }

    /** What is put into the whole of a mixture goes on, by whatever word: quenched with acid, then evaporated. */
    @ParameterizedTest
    @CsvSource({
        "base, quench, 4 M HCl in dioxane, true",
        "base, dilute, HCl gas, true",
        "base, wash, HCl (4 M in dioxane), true",
        "acid, quench, 2 M NaOH, true"
    })
    void acidOrBaseOfAWholeMixtureGoesOn(String character, String operation, String material, boolean asked) {
        SmallBook book = book(character, "concentrate", "")
                .but("workup", "From", "M0")
                .row("workup", "Step", "2b", "Operation", operation, "From", "O1", "Material", material)
                .but("workup", "Gives other", "M0");
        assertEquals(asked, asked(book));
    }

    /** Nobody says that P is a base or an acid: nitrogen, or two oxygens, may be one, and it is only asked. */
    @ParameterizedTest
    @CsvSource({
        "C13H19N, acidify, CHECK",
        "C13H20ClN, acidify, ",
        "C13H19N, basify, ",
        "C13H18O2, basify, CHECK",
        "C13H18O, basify, ",
        "C13H18O, acidify, "
    })
    void productWithoutCharacterIsAskedAboutByItsFormula(String formula, String operation, Severity severity) {
        SmallBook book =
                book("", operation, "").but("products", "Formula", formula).but("products", "pKa", "");
        assertEquals(
                Optional.ofNullable(severity),
                book.reviewOfRun().findings().stream()
                        .filter(f -> f.code() == FindingCode.ISOLATED_FORM_OPEN)
                        .map(Finding::severity)
                        .findFirst());
    }

    private static SmallBook withMaterial(SmallBook book, String material) {
        return book.but("workup", "From", "M0")
                .row(
                        "workup",
                        "Step",
                        "2b",
                        "Operation",
                        "dilute",
                        "From",
                        "O1",
                        "Material",
                        material,
                        "Gives other",
                        "M0");
    }

    @Test
    void waterThatComesLaterDecidesAnew() {
        SmallBook book = book("base", "acidify", "")
                .row("workup", "Step", "4", "Operation", "basify", "From", "C1", "Gives other", "C2")
                .row("isolated", "Lot", "C2", "Product", "P", "Stage", "purified", "From", "C1", "Net", "15.0");
        assertEquals(
                1,
                book.reviewOfRun().findings().stream()
                        .filter(f -> f.code() == FindingCode.ISOLATED_FORM_OPEN)
                        .count());
    }

    /** Acid beyond all base leaves a salt where nothing of the workup sets the base free (common practice); 100 mmol of substrate. */
    @ParameterizedTest
    @CsvSource({
        "base, trifluoroacetic acid, 50, , , true",
        "base, trifluoroacetic acid, 0.5, , , false",
        "base, trifluoroacetic acid, 50, triethylamine, 80, false",
        "base, trifluoroacetic acid, 50, triethylamine, 10, true",
        "acid, sodium hydroxide, 8, , , true",
        "acid, sodium hydroxide, 1, , , false",
        "acid, trifluoroacetic acid, 50, , , false"
    })
    void whatWasChargedMayLeaveAnIon(
            String character, String material, String grams, String other, String otherGrams, boolean asked) {
        SmallBook book = charged(character, material, grams);
        if (other != null) {
            book.row("charges", "Material", other, "Role", "base", "Actual amount", otherGrams, "Actual unit", "g");
        }
        book.row("workup", "Step", "1", "Operation", "strip", "From", "RM", "Gives other", "R1+D1")
                .row("workup", "Step", "2", "Operation", "precipitate", "From", "R1", "Material", "diethyl ether")
                .but("workup", "Volume", "150")
                .but("workup", "Gives other", "S1")
                .row("workup", "Step", "3", "Operation", "filter", "From", "S1", "Gives other", "C1+L1");
        assertEquals(asked, asked(book));
    }

    @Test
    void aWashSetsItFreeAgain() {
        SmallBook book = charged("base", "trifluoroacetic acid", "50")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "2 M NaOH", "Volume", "400")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "O1", "Gives other", "C1+D1");
        assertEquals(false, asked(book));
    }

    private static SmallBook charged(String character, String material, String grams) {
        return SmallBook.reaction()
                .but("products", "Character", character)
                .but("products", "Formula", "C13H19N")
                .but("products", "pKa", character.equals("base") ? "9" : "4")
                .row("charges", "Material", material, "Role", "reagent", "Actual amount", grams, "Actual unit", "g")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.0");
    }

    /** A free acid of pKa 4 is not filtered from water of pH 13; the pH may stand with the filtrate. */
    @ParameterizedTest
    @CsvSource({"13, true", "2, false", ", false"})
    void thePhOfTheFiltrateCounts(String pH, boolean asked) {
        SmallBook book = SmallBook.reaction()
                .but("products", "Character", "acid")
                .but("products", "Formula", "C7H6O2")
                .but("products", "pKa", "4")
                .row("workup", "Step", "1", "Operation", "acidify", "From", "RM", "Material", "6 M HCl", "Volume", "12")
                .but("workup", "Gives other", "S1")
                .row("workup", "Step", "2", "Operation", "filter", "From", "S1", "Gives other", "C1+ML1")
                .row("layers", "Layer", "ML1", "Phase", "aqueous", "Net", "100", "Status", "kept")
                .but("layers", "pH", pH == null ? "" : pH)
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "S1", "Net", "18.0");
        assertEquals(asked, asked(book));
    }
}
