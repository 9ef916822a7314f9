package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;

/** Expected molar masses by the IUPAC abridged standard atomic weights: H 1.008, C 12.011, O 15.999. */
class MolarMassAccountTest {
    @Test
    void formulaWinsOverATypedMolarMass() {
        // H2O = 2 × 1.008 + 15.999 = 18.015.
        SmallBook book = SmallBook.reaction().but("charges", "Formula", "H2O");
        assertEquals(18.015, of(book).of("S").orElseThrow(), 0.001);
    }

    @Test
    void typedMolarMassStandsInForAFormulaThatCannotBeRead() {
        assertEquals(
                100,
                of(SmallBook.reaction().but("charges", "Formula", "Xy2Q"))
                        .of("S")
                        .orElseThrow(),
                1e-12);
    }

    @Test
    void typedMolarMassStandsWithoutAFormula() {
        assertEquals(100, of(SmallBook.reaction()).of("S").orElseThrow(), 1e-12);
    }

    @Test
    void nameIsMatchedWithoutRegardToCase() {
        assertEquals(100, of(SmallBook.reaction()).of(" s ").orElseThrow(), 1e-12);
    }

    @Test
    void solventNotListedInTheBookComesFromTheReferenceData() {
        // C4H8O2 = 4 × 12.011 + 8 × 1.008 + 2 × 15.999 = 88.106.
        assertEquals(88.106, of(SmallBook.reaction()).of("ethyl acetate").orElseThrow(), 0.002);
    }

    @Test
    void assayRowTeachesTheFormulaOfASubstanceNotListedElsewhere() {
        SmallBook book = SmallBook.reaction().row("assays", "Sample", "A1", "Substance", "dry ice", "Formula", "CO2");
        assertEquals(44.009, of(book).of("dry ice").orElseThrow(), 0.001);
    }

    @Test
    void unknownSubstanceHasNone() {
        assertTrue(of(SmallBook.reaction()).of("unobtainium").isEmpty());
    }

    private static MolarMassAccount of(SmallBook book) {
        return new MolarMassAccount(book.run(), SmallBook.substances());
    }
}
