package workuptally.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTest {
    /** IUPAC abridged standard atomic weights, 2021, from memory. */
    static final AtomicWeights WEIGHTS = AtomicWeights.of(Map.ofEntries(
            Map.entry("H", new AtomicMass(1.0080, 0.0002)),
            Map.entry("C", new AtomicMass(12.011, 0.002)),
            Map.entry("N", new AtomicMass(14.007, 0.001)),
            Map.entry("O", new AtomicMass(15.999, 0.001)),
            Map.entry("F", new AtomicMass(18.998, 0.001)),
            Map.entry("Na", new AtomicMass(22.990, 0.001)),
            Map.entry("Mg", new AtomicMass(24.305, 0.002)),
            Map.entry("S", new AtomicMass(32.06, 0.02)),
            Map.entry("Cl", new AtomicMass(35.45, 0.01)),
            Map.entry("K", new AtomicMass(39.098, 0.001)),
            Map.entry("Ca", new AtomicMass(40.078, 0.004)),
            Map.entry("Fe", new AtomicMass(55.845, 0.002)),
            Map.entry("Cu", new AtomicMass(63.546, 0.003)),
            Map.entry("Br", new AtomicMass(79.904, 0.003)),
            Map.entry("Li", new AtomicMass(6.94, 0.06)),
            Map.entry("P", new AtomicMass(30.974, 0.001)),
            Map.entry("Pr", new AtomicMass(140.91, 0.01))));

    @ParameterizedTest
    @CsvSource({
        "C7H6O2, C7H6O2",
        "Cu(NO3)2, CuN2O6",
        "K3[Fe(CN)6], C6FeK3N6",
        "{[Ca(OH)]2}3, Ca6H6O6",
        "(CH3)2CHOH, C3H8O",
        "CH3CO2H, C2H4O2",
        "MgSO4·7H2O, H14MgO11S",
        "MgSO4.7H2O, H14MgO11S",
        "MgSO4*7H2O, H14MgO11S",
        "MgSO₄ · 7 H₂O, H14MgO11S",
        "K2CO3.1.5H2O, CH3K2O4.5",
        "CaSO4.0.5H2O, CaHO4.5S",
        "CaSO4·½H2O, CaHO4.5S",
        "2KHSO5.KHSO4.K2SO4, H3K5O18S4",
        "C7H9N·HCl, C7H10ClN",
        "CDCl3, CCl3D",
        "CD3OD, CD4O",
        "[2H]2O, D2O",
        "[13C]6H6, [13C]6H6",
        "[13C6]H6, [13C]6H6",
        "[15N]H4Cl, ClH4[15N]",
        "[Pr]Cl3, Cl3Pr",
        "[NH4]Cl, ClH4N",
        "RbCl, ClRb",
        "XeF2, F2Xe",
        "RuCl3, Cl3Ru",
        "C12H10, C12H10"
    })
    void formulasAreReadIntoHillOrder(String typed, String hill) {
        assertEquals(hill, Formula.parse(typed).toString());
    }

    @ParameterizedTest
    @CsvSource({
        "Na+, 1",
        "Ca2+, 2",
        "Ca++, 2",
        "NH4+, 1",
        "MnO4-, -1",
        "SO4 2-, -2",
        "SO4^2-, -2",
        "SO4(2-), -2",
        "SO₄²⁻, -2",
        "PF6−, -1",
        "C7H5O2-, -1",
        "Hg2 2+, 2",
        "Fe(CN)6^3-, -3",
        "NaCl, 0"
    })
    void chargesAreRead(String typed, int charge) {
        assertEquals(charge, Formula.parse(typed).charge());
    }

    @Test
    void chargedDigitOfASingleElementIsNotASubscript() {
        assertEquals("Ca^2+", Formula.parse("Ca2+").toString());
        assertEquals(2, Formula.parse("Hg2 2+").count("Hg"), 0);
        assertEquals(4, Formula.parse("NH4+").count("H"), 0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PhCO2H | Ph is an abbreviation of a group; write C6H5",
                "EtOAc | Et is an abbreviation",
                "AcOH | write C2H3O, or [Ac] for the element",
                "HOAc | Ac is an abbreviation",
                "MeOH | write CH3",
                "tBuOH | tBu is an abbreviation",
                "KOtBu | tBu is an abbreviation",
                "iPr2NEt | iPr is an abbreviation",
                "BnBr | write C7H7",
                "BocNH2 | write C5H9O2",
                "TsCl | write C7H7SO2",
                "TBSCl | write C6H15Si",
                "ArBr | the aryl group in full",
                "RMgX | R is an abbreviation",
                "CH3X | X is an abbreviation",
                "DBU | it is an abbreviation; write the formula, C9H16N2",
                "NBS | C4H4BrNO2",
                "THF | T is not an element",
                "PrOH | write C3H7",
                "nacl | symbols begin with a capital",
                "C7H6O2) | closes nothing",
                "(C7H6O2 | not closed",
                "(C7H6O2] | closes nothing",
                "C()2 | empty",
                "C0H6 | out of range",
                "C9999999 | out of range",
                "MgSO4.xH2O | number of water molecules",
                "MgSO4. | missing",
                "0H2O | a number stands before it",
                "SO42- | read in two ways",
                "Na+- | both signs",
                "CH3-OH | stands where an element symbol is expected",
                "[99C]H4 | nuclide 99C is not known",
                "C6,H6 | ','",
                "CH3COQ | Q is not an element",
                "+ | expected"
            })
    void textThatIsNoFormulaIsRefusedWithTheReason(String typed, String reason) {
        IllegalFormulaException thrown = assertThrows(IllegalFormulaException.class, () -> Formula.parse(typed));
        assertTrue(thrown.getMessage().contains(reason), thrown.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   "})
    void blankTextIsRefused(String typed) {
        assertThrows(IllegalFormulaException.class, () -> Formula.parse(typed));
    }

    /** Signs that look alike, typed one for the other: 0 for O, I or 1 for the l of chlorine (common practice). */
    @ParameterizedTest
    @CsvSource({
        "C7H5F02, begins with 0",
        "C11H12FN02, begins with 0",
        "C7H5F 02, begins with 0",
        "NaN03, begins with 0",
        "(CH3)02H, begins with 0",
        "C7H5CIO2, CI may stand for Cl",
        "CH3CI, CI may stand for Cl",
        "NaCIO, C",
        "CIO2, CI may stand for Cl",
        "C6H5N·HCI, CI may stand for Cl",
        "C7H5C1O2, C1 may stand for Cl",
        "HC1, C1 may stand for Cl",
        "C1CH2CO2H, C1 may stand for Cl"
    })
    void signsThatLookAlikeAreNotCounted(String typed, String why) {
        IllegalFormulaException refused = assertThrows(IllegalFormulaException.class, () -> Formula.parse(typed));
        assertTrue(refused.getMessage().contains(why), refused::getMessage);
    }

    @ParameterizedTest
    @CsvSource({
        "CI4, CI4",
        "CHI3, CHI3",
        "C[I]Cl3, CCl3I",
        "CIr, CIr",
        "C1H4, CH4",
        "C1H4O1, CH4O",
        "C10H10, C10H10",
        "C20H100, C20H100",
        "CuSO4·0.5H2O, CuHO4.5S"
    })
    void whatOnlyResemblesThemIsCounted(String typed, String hill) {
        assertEquals(hill, Formula.parse(typed).toString());
    }

    @Test
    void overlongAndOverdeepTextIsRefused() {
        assertThrows(IllegalFormulaException.class, () -> Formula.parse("C".repeat(201)));
        assertThrows(IllegalFormulaException.class, () -> Formula.parse("(".repeat(21) + "C" + ")".repeat(21)));
        assertEquals(1, Formula.parse("(".repeat(20) + "C" + ")".repeat(20)).count("C"), 0);
        assertThrows(IllegalFormulaException.class, () -> Formula.parse("(C9999)99"));
    }

    @Test
    void molarMassOfBenzoicAcidAgreesWithTheHandbook() {
        // CRC Handbook, benzoic acid 122.122 g/mol (memory); one unit in the last place for newer atomic weights.
        assertEquals(122.122, Formula.parse("C7H6O2").molarMass(WEIGHTS).gramsPerMole(), 0.002);
    }

    @Test
    void uncertaintyOfTheMolarMassIsTheRectangularRuleSummedOverElements() {
        // By hand: (7·0.002)² + (6·0.0002)² + (2·0.001)² = 2.0144e-4, divided by 3, square root 0.008194.
        assertEquals(0.008194, Formula.parse("C7H6O2").molarMass(WEIGHTS).standardUncertaintyGramsPerMole(), 1e-6);
    }

    @Test
    void electronsAreTakenFromCations() {
        assertEquals(22.98945, Formula.parse("Na+").molarMass(WEIGHTS).gramsPerMole(), 1e-5);
    }

    @Test
    void deuteratedChloroformIsHeavier() {
        // Common practice: CDCl3 120.38 g/mol, CHCl3 119.37 g/mol.
        assertEquals(120.38, Formula.parse("CDCl3").molarMass(WEIGHTS).gramsPerMole(), 0.01);
        assertEquals(119.37, Formula.parse("CHCl3").molarMass(WEIGHTS).gramsPerMole(), 0.01);
    }

    @Test
    void elementWithoutAtomicWeightIsRefused() {
        IllegalFormulaException thrown = assertThrows(
                IllegalFormulaException.class, () -> Formula.parse("TcCl4").molarMass(WEIGHTS));
        assertTrue(thrown.getMessage().contains("Tc"), thrown.getMessage());
    }

    @Test
    void sameAtomsWrittenOtherwiseAreTheSameComposition() {
        assertTrue(Formula.parse("(CH3)2CHOH").sameComposition(Formula.parse("C3H8O")));
        assertTrue(!Formula.parse("C3H8O").sameComposition(Formula.parse("C3H8O+")));
    }

    @Test
    void saltsHalvesAndIsomersAreReadAsPeopleTypeThem() {
        assertTrue(Formula.parse("C9H13N x HCl").sameComposition(Formula.parse("C9H14ClN")));
        assertTrue(Formula.parse("C9H13N x 2 HCl").sameComposition(Formula.parse("C9H15Cl2N")));
        assertTrue(Formula.parse("C13H12O · 1/2 H2O").sameComposition(Formula.parse("C13H12O·0.5H2O")));
        assertTrue(Formula.parse("C13H12O (racemic)").sameComposition(Formula.parse("C13H12O")));
    }

    @Test
    void aNumberBeforeTheWholeFormulaIsRefused() {
        assertThrows(IllegalFormulaException.class, () -> Formula.parse("13C13H12O"));
        assertThrows(IllegalFormulaException.class, () -> Formula.parse("2C7H6O2"));
    }
}
