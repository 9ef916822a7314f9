package workuptally.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.amounts.ChargeAmount;

/** Amounts of a plan as they are measured out; the expected figures are worked out by hand from 10.00 mmol of S, 1.000 g. */
class PlannedAmountsTest {
    private static SmallBook plan() {
        return SmallBook.empty()
                .but("runs", "Status", "planned")
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200", "Coefficient", "1")
                .row(
                        "charges",
                        "Material",
                        "S",
                        "Role",
                        "substrate",
                        "Molar mass",
                        "100",
                        "Coefficient",
                        "1",
                        "Planned amount",
                        "1.000",
                        "Planned unit",
                        "g");
    }

    private static ChargeAmount second(SmallBook book) {
        return book.tally().amounts().get(1);
    }

    @Test
    void equivalentsOfASolutionAreAVolumeByItsTitre() {
        ChargeAmount butyllithium = second(plan().row(
                        "charges",
                        "Material",
                        "n-butyllithium in hexane",
                        "Role",
                        "base",
                        "Planned amount",
                        "1.10",
                        "Planned unit",
                        "equiv",
                        "Molarity",
                        "2.5",
                        "Titre",
                        "2.31"));
        assertEquals(11.0, butyllithium.amountMillimoles().orElseThrow().value(), 1e-9);
        // 11 mmol / 2.31 mol/L
        assertEquals(4.762, butyllithium.volumeMillilitres().orElseThrow().value(), 0.0005);
    }

    @Test
    void millimolesOfASolutionAreAVolumeByItsTitre() {
        ChargeAmount butyllithium = second(plan().row(
                        "charges",
                        "Material",
                        "n-butyllithium in hexane",
                        "Role",
                        "base",
                        "Planned amount",
                        "11",
                        "Planned unit",
                        "mmol",
                        "Titre",
                        "2.31"));
        assertEquals(4.762, butyllithium.volumeMillilitres().orElseThrow().value(), 0.0005);
    }

    @Test
    void molePercentOfASolidIsAMass() {
        ChargeAmount catalyst = second(plan().row(
                        "charges",
                        "Material",
                        "catalyst K",
                        "Role",
                        "catalyst",
                        "Molar mass",
                        "250",
                        "Planned amount",
                        "5",
                        "Planned unit",
                        "mol %"));
        // 0.05 × 10 mmol × 250 g/mol
        assertEquals(0.125, catalyst.massGrams().orElseThrow().value(), 1e-9);
        assertTrue(catalyst.volumeMillilitres().isEmpty());
    }

    @Test
    void equivalentsOfALiquidAreAVolumeByItsDensityAndContent() {
        ChargeAmount liquid = second(plan().row(
                        "charges",
                        "Material",
                        "liquid L",
                        "Role",
                        "reagent",
                        "Molar mass",
                        "80",
                        "Planned amount",
                        "1.2",
                        "Planned unit",
                        "eq",
                        "Assay",
                        "96",
                        "Density",
                        "0.8"));
        // 12 mmol × 80 g/mol / 0.96 = 1.000 g; / 0.8 g/mL
        assertEquals(1.0, liquid.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(1.25, liquid.volumeMillilitres().orElseThrow().value(), 1e-9);
    }

    @Test
    void aPlannedMassOfAListedLiquidHasItsVolume() {
        ChargeAmount toluene = second(plan().row(
                        "charges",
                        "Material",
                        "toluene",
                        "Role",
                        "solvent",
                        "Planned amount",
                        "43.3",
                        "Planned unit",
                        "g"));
        // 0.8669 g/mL at 20 °C, a handbook figure from memory: 49.9 mL
        assertEquals(49.9, toluene.volumeMillilitres().orElseThrow().value(), 0.3);
    }

    @Test
    void equivalentsWithoutAKnownSubstrateSayWhatIsMissing() {
        SmallBook book = SmallBook.empty()
                .row("charges", "Material", "B", "Role", "base", "Planned amount", "2", "Planned unit", "equiv");
        assertTrue(book.tally().amounts().get(0).amountMillimoles().isEmpty());
        assertTrue(book.tally().notComputed().stream().anyMatch(n -> n.because().contains("equivalents")));
    }
}
