package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Run;

class SkeletonsTest {
    @Test
    void blankSkeletonIsOneUnitOfTheSubstrate() {
        Skeletons skeletons = of(SmallBook.reaction());
        assertEquals(List.of("S"), skeletons.partners());
        assertEquals(1, skeletons.units("P", "S"), 1e-12);
    }

    /** Substrate C10H18O, Wittig salt C19H18BrP, alkene C11H20. Formulas: CRC Handbook, from memory. */
    @ParameterizedTest
    @CsvSource({
        "C18H15OP, 0", // triphenylphosphine oxide
        "C10H20O, 1", // the alcohol
        "C29H36OP, 1", // holds both
        "C10H17Br, 1", // bromide with the carbons of the substrate
        "'', 1"
    })
    void byProductOfAReagentIsNotCountedAsSubstrate(String formula, double units) {
        SmallBook book = SmallBook.empty()
                .row("products", "Product", "P", "Wanted", "yes", "Formula", "C11H20", "Coefficient", "1")
                .row("products", "Product", "Q", "Wanted", "no", "Formula", formula, "Molar mass", "250")
                .row("charges", "Material", "S", "Role", "substrate", "Formula", "C10H18O", "Coefficient", "1")
                .row("charges", "Material", "W", "Role", "reagent", "Formula", "C19H18BrP");
        assertEquals(units, of(book).units("Q", "S"), 1e-12);
        assertEquals(1, of(book).units("P", "S"), 1e-12);
    }

    @Test
    void everyPartnerNamedHasItsUnits() {
        Skeletons skeletons = of(SmallBook.reaction().but("products", "Skeleton", "S 1; R 2"));
        assertEquals(List.of("S", "R"), skeletons.partners());
        assertEquals(2, skeletons.units("P", "R"), 1e-12);
    }

    @Test
    void partnerHoldsOneUnitOfItself() {
        assertEquals(1, of(SmallBook.reaction()).units("s", "S"), 1e-12);
    }

    @Test
    void substanceOfWhichNothingIsKnownHoldsNone() {
        assertEquals(0, of(SmallBook.reaction()).units("tar", "S"), 1e-12);
    }

    @Test
    void amountChargedIsTheSumOfItsRows() {
        // 100 mmol + 20 mmol.
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "S", "Molar mass", "100", "Actual amount", "2.00", "Actual unit", "g");
        assertEquals(120, of(book).chargedMillimoles("S").orElseThrow().value(), 1e-9);
    }

    @Test
    void amountChargedIsNotKnownWhereOneOfItsRowsIsNot() {
        SmallBook book = SmallBook.reaction()
                .row("charges", "Material", "S", "Molar mass", "100", "Actual amount", "", "Actual unit", "g");
        assertTrue(of(book).chargedMillimoles("S").isEmpty());
    }

    @Test
    void componentOfASeparationIsItsOwnPartner() {
        SmallBook book = SmallBook.empty()
                .but("runs", "Kind", "separation")
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200")
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150");
        assertEquals(List.of("P", "Q"), of(book).partners());
    }

    private static Skeletons of(SmallBook book) {
        Run run = book.run();
        return new Skeletons(run, book.tally().amounts());
    }
}
