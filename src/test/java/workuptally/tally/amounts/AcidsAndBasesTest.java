package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;

/** Acid and base of 10 mmol of a charge; textbook stoichiometry. */
class AcidsAndBasesTest {
    private static SmallBook charged(String material, String formula) {
        return SmallBook.reaction()
                .row("charges", "Material", material, "Formula", formula, "Role", "reagent", "Molar mass", "50")
                .but("charges", "Actual amount", "10")
                .but("charges", "Actual unit", "mmol");
    }

    private static AcidsAndBases account(SmallBook book) {
        return new AcidsAndBases(book.run(), SmallBook.substances());
    }

    /**
     * Strong acid, weak acid, hydroxide, carbonate, hydrogencarbonate, weak base, mild base; mmol. Pivaloyl chloride gives HCl and pivalic
     * acid; pKa of ammonium 9.25, of H2PO4− 7.20 and of HPO4 2− 12.35, of acetic acid 4.76, of phenol 9.99, of benzoic acid 4.2.
     */
    @ParameterizedTest
    @CsvSource({
        "hydrogen chloride, '', 10, 0, 0, 0, 0, 0, 0",
        "H2SO4, '', 20, 0, 0, 0, 0, 0, 0",
        "acetic acid, '', 0, 10, 0, 0, 0, 0, 0",
        "benzoic acid, '', 0, 10, 0, 0, 0, 0, 0",
        "phenol, '', 0, 0, 0, 0, 0, 0, 0",
        "NH4Cl, '', 0, 0, 0, 0, 0, 0, 0",
        "NaOH, '', 0, 0, 10, 0, 0, 0, 0",
        "K2CO3, '', 0, 0, 0, 10, 0, 0, 0",
        "NaHCO3, '', 0, 0, 0, 0, 10, 0, 0",
        "ammonia, '', 0, 0, 0, 0, 0, 10, 0",
        "K3PO4, '', 0, 0, 0, 0, 0, 20, 0",
        "Et3N, '', 0, 0, 0, 0, 0, 10, 0",
        "sodium acetate, '', 0, 0, 0, 0, 0, 0, 10",
        "pivaloyl chloride, '', 10, 10, 0, 0, 0, 0, 0",
        "TFAA, '', 0, 20, 0, 0, 0, 0, 0",
        "methanol, '', 0, 0, 0, 0, 0, 0, 0",
        "house base 7, NaOH, 0, 0, 10, 0, 0, 0, 0",
        "NaOH, ?!, 0, 0, 10, 0, 0, 0, 0"
    })
    void chargesBringTheirEquivalents(
            String material,
            String formula,
            double strongAcid,
            double weakAcid,
            double strongBase,
            double carbonate,
            double hydrogencarbonate,
            double weakBase,
            double mildBase) {
        SmallBook book = charged(material, formula);
        Equivalents found = account(book).of(book.tally().amounts().get(1));
        assertEquals(
                new Equivalents(strongAcid, weakAcid, strongBase, carbonate, hydrogencarbonate, weakBase, mildBase),
                found);
    }

    @Test
    void anUnknownAmountCountsAsNothing() {
        SmallBook book = charged("NaOH", "").but("charges", "Actual amount", "");
        assertTrue(account(book).of(book.tally().amounts().get(1)).isNone());
    }

    @Test
    void hydrogenHalidesAreMineralAcids() {
        AcidsAndBases account = account(SmallBook.reaction());
        assertTrue(account.isHydrogenHalide("hydrogen chloride"));
        assertFalse(account.isHydrogenHalide("CO2"));
        assertFalse(account.isHydrogenHalide("ammonia"));
    }

    /** Only what water itself sets free, in a known amount: one HCl of pivaloyl chloride. */
    @Test
    void gasesWithWaterHaveAnAmount() {
        SmallBook book = charged("pivaloyl chloride", "");
        assertEquals(
                List.of(1.0),
                account(book).gasesWithWater(book.run().charges().get(1)).stream()
                        .map(gas -> gas.molesPerMole().getAsDouble())
                        .toList());
        SmallBook hydrogencarbonate = charged("NaHCO3", "");
        assertEquals(
                List.of(),
                account(hydrogencarbonate)
                        .gasesWithWater(hydrogencarbonate.run().charges().get(1)));
    }

    /** The hydrogencarbonate of the bench rules takes up acids of a pKa below 6.4. */
    @ParameterizedTest
    @CsvSource({"acid, 6.39, true", "acid, 6.4, false", "acid, '', false", "base, 5, false", "neutral, 5, false"})
    void characterAndConstantOfAProductCount(String character, String pKa, boolean weakAcid) {
        SmallBook book =
                SmallBook.reaction().but("products", "Character", character).but("products", "pKa", pKa);
        assertEquals(weakAcid, account(book).isWeakAcid("P"));
        assertEquals(
                character.equals("base") ? Optional.of(5.0) : Optional.empty(),
                account(book).pKaOfBase("P"));
    }

    /** By the capacity of the wash, mmol/mL, or the molarity beside it: 20 mL × 1.102 of hydrogencarbonate; 10 mL × 10.0 mol/L of one proton each. */
    @ParameterizedTest
    @CsvSource({
        "1 M HCl, 20, '', 20, 0, 0",
        "2 M NaOH, 10, '', 0, 20, 0",
        "sat. NaHCO3, 20, '', 0, 0, 22.04",
        "1 M HCl, 20, 0.5, 10, 0, 0",
        "1 M HCl, '', '', 0, 0, 0",
        "brine, 20, '', 0, 0, 0",
        "house mix, 20, '', 0, 0, 0"
    })
    void washesBringTheirCapacity(
            String material, String volume, String molarity, double acid, double base, double hydrogencarbonate) {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", material)
                .but("workup", "Volume", volume)
                .but("workup", "Molarity", molarity);
        Readings readings = new Readings();
        Optional<MeasuredValue> millilitres =
                volume.isEmpty() ? Optional.empty() : Optional.of(readings.exact(Double.parseDouble(volume)));
        Equivalents found = account(book)
                .of(new Addition(book.run().steps().get(0), material, Optional.empty(), millilitres, false));
        assertEquals(acid, found.strongAcid(), 1e-9);
        assertEquals(base, found.strongBase(), 1e-9);
        assertEquals(hydrogencarbonate, found.hydrogencarbonate(), 1e-9);
        assertEquals(acid + base + hydrogencarbonate, found.acid() + found.base(), 1e-9);
    }

    /** Benzoic acid 4.21 (NBS 1967, as in the partition table); of a base none is told. */
    @Test
    void constantsOfListedAcidsComeFromTheReferenceData() {
        AcidsAndBases account = account(SmallBook.reaction());
        assertEquals(4.21, account.pKaOfAcid("benzoic acid").orElseThrow(), 1e-9);
        assertEquals(Optional.empty(), account.pKaOfAcid("aniline"));
        assertEquals(Optional.empty(), account.pKaOfBase("aniline"));
    }

    @Test
    void componentOfALayerIsKnownByNameOrFormula() {
        AcidsAndBases account = account(SmallBook.reaction());
        Substances substances = SmallBook.substances();
        assertEquals(new Equivalents(0, 0, 3, 0, 0, 0, 0), account.of("NaOH", Optional.empty(), 3));
        assertEquals(new Equivalents(0, 0, 0, 3, 0, 0, 0), account.of("house base", substances.formulaIn("K2CO3"), 3));
        assertTrue(account.of("house base", Optional.empty(), 3).isNone());
    }
}
