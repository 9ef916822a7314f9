package workuptally.report.view.labels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.report.view.wording.ReadableNumbers;

/**
 * Labels of layers that hold a solution as it is sold. Statements: Regulation (EC) 1272/2008, Annex VI, sodium hypochlorite solution (H314,
 * H410, EUH031), hydrobromic acid (H314, H335) and hydrogen peroxide (H318 from 8 %), limits of mixtures by its Annex I.
 */
class LabelsOfSolutionsTest {
    private static final String BURNS = "Causes severe skin burns and eye damage.";
    private static final String TOXIC_GAS = "Contact with acids liberates toxic gas.";

    private static SmallBook book(String material, String assay, String density) {
        return SmallBook.reaction()
                .row("charges", "Material", material, "Role", "reagent", "Actual amount", "40.0", "Actual unit", "mL")
                .but("charges", "Assay (% w/w)", assay)
                .but("charges", "Density (g/mL)", density)
                .row("charges", "Material", "ethyl acetate", "Role", "solvent", "Actual amount", "60.0")
                .but("charges", "Actual unit", "mL")
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "ethyl acetate")
                .but("workup", "Volume", "10")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "48.0", "Status", "kept");
    }

    private static LabelText label(SmallBook book) {
        return LabelText.ofLayers(book.review(), new ReadableNumbers('.')).get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "sodium hypochlorite solution 12 %, 12, 1.20",
        "sodium hypochlorite solution 12 %, '', 1.20",
        "bleach, 12, 1.20",
        "NaOCl 12 %, '', 1.20"
    })
    void bleachIsWaterAndHypochloriteWithItsHazards(String material, String assay, String density) {
        LabelText label = label(book(material, assay, density));
        assertTrue(label.contents().contains("water 8"), label.contents());
        assertTrue(label.contents().contains("sodium hypochlorite 12"), label.contents());
        assertTrue(label.hazards().contains(BURNS), label.hazards());
        assertTrue(label.hazards().contains(TOXIC_GAS), label.hazards());
        assertFalse(label.hazards().contains("Not judged: water"), label.hazards());
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaOCl 12 %", "hydrobromic acid 48 %", "hydriodic acid 57 %", "perchloric acid 70 %"})
    void aSolutionOfUnknownMassIsNoWater(String material) {
        LabelText label = label(book(material, "", ""));
        assertFalse(label.contents().contains("water"), label.contents());
        assertTrue(label.hazards().startsWith("Make-up not known: label by what went in"), label.hazards());
        assertTrue(label.hazards().contains(BURNS), label.hazards());
    }

    @Test
    void whatIsNotKnownIsTheShareOfItsVolume() {
        LabelText label = label(book("NaOCl 12 %", "", "")
                .first("workup", "Material", "water")
                .first("workup", "Volume", "400")
                .but("layers", "Net", "450"));
        assertTrue(label.contents().contains("not stated 8.5"), label.contents());
        assertTrue(label.contents().contains("sodium hypochlorite (not shown gone)"), label.contents());
        assertTrue(label.hazards().contains(TOXIC_GAS), label.hazards());
    }

    @Test
    void anOxidantThatATestShowedGoneIsNotOnTheLabel() {
        SmallBook open = book("NaOCl 12 %", "", "");
        assertTrue(
                label(open).contents().contains("not shown gone"), label(open).contents());
        SmallBook gone = book("NaOCl 12 %", "", "").first("workup", "Quench test", "negative");
        assertFalse(
                label(gone).contents().contains("not shown gone"), label(gone).contents());
    }

    @Test
    void aSolutionOfKnownDensityIsCountedByIt() {
        LabelText peroxide = label(book("hydrogen peroxide 30 %", "", ""));
        assertTrue(peroxide.contents().contains("hydrogen peroxide 2"), peroxide.contents());
        assertTrue(peroxide.hazards().contains("Causes serious eye damage."), peroxide.hazards());
        LabelText salt = label(book("20 % NaCl", "", ""));
        assertFalse(salt.hazards().contains("Make-up not known"), salt.hazards());
        assertEquals(-1, salt.contents().indexOf("not stated"), salt.contents());
    }
}
