package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Theory.ProductTheory;

class TheoryAccountTest {
    @Test
    void smallestAmountOverCoefficientLimits() {
        // S 100 mmol / 1 = 100; R 150 mmol / 2 = 75, which limits: P 75 mmol × 200 g/mol = 15.0 g.
        Theory theory = with("R", "2", "150").tally().theory().orElseThrow();
        assertEquals(List.of("R"), limiting(theory));
        assertEquals(150, theory.limiting().get(0).amountMillimoles().value(), 1e-9);
        assertEquals(75, theory.extentMillimoles().value(), 1e-9);
        assertEquals(15.0, product(theory).massGrams().value(), 1e-9);
    }

    @Test
    void chargeWithoutCoefficientDoesNotCompete() {
        Theory theory = with("R", "", "1").tally().theory().orElseThrow();
        assertEquals(List.of("S"), limiting(theory));
    }

    @Test
    void amountsThatCannotBeToldApartAreBothNamed() {
        // 100 and 100.2 mmol with u 0.36 and 0.30 mmol: 0.2 < 2 × 0.47.
        Theory theory = with("R", "1", "100.2").tally().theory().orElseThrow();
        assertEquals(List.of("S", "R"), limiting(theory));
    }

    @Test
    void amountsFurtherApartThanTwiceTheirUncertaintyAreToldApart() {
        // 3 mmol > 2 × 0.47 mmol.
        Theory theory = with("R", "1", "103").tally().theory().orElseThrow();
        assertEquals(List.of("S"), limiting(theory));
    }

    @Test
    void portionsOfOneMaterialAddUp() {
        // 10.00 g + 2.00 g of 100 g/mol = 120 mmol: theory 24.0 g, not that of the second portion alone.
        Theory theory = secondPortion("2.00").tally().theory().orElseThrow();
        assertEquals(List.of("S"), limiting(theory));
        assertEquals(120, theory.limiting().get(0).amountMillimoles().value(), 1e-9);
        assertEquals(24.0, product(theory).massGrams().value(), 1e-9);
    }

    @Test
    void theoryOfThePlannedAmountsStandsBesideThatOfWhatWasWeighed() {
        // Planned 9.00 g of 100 g/mol, weighed 10.00 g; product 200 g/mol, 1:1: 18.0 g planned, 20.0 g by what was
        // weighed.
        Theory theory = SmallBook.reaction()
                .but("charges", "Planned amount", "9.00")
                .but("charges", "Planned unit", "g")
                .tally()
                .theory()
                .orElseThrow();
        assertEquals(20.0, product(theory).massGrams().value(), 1e-9);
        assertEquals(18.0, product(theory).plannedMassGrams().orElseThrow(), 1e-9);
    }

    @Test
    void withoutPlannedAmountsThereIsNoPlannedTheory() {
        RunTally tally = SmallBook.reaction().tally();
        assertTrue(product(tally.theory().orElseThrow()).plannedMassGrams().isEmpty());
    }

    @Test
    void plannedAmountMissingForOnePartnerLeavesPlannedTheoryOutAndSaysNothing() {
        SmallBook book = with("R", "1", "150");
        RunTally plain = book.tally();
        RunTally half = book.but("charges", "Planned amount", "140")
                .but("charges", "Planned unit", "mmol")
                .tally();
        assertTrue(product(half.theory().orElseThrow()).plannedMassGrams().isEmpty());
        assertEquals(plain.notComputed(), half.notComputed());
    }

    @Test
    void coefficientOfTheProductMultiplies() {
        // 100 mmol × 0.5 × 200 g/mol = 10.0 g.
        Theory theory = SmallBook.reaction()
                .but("products", "Coefficient", "0.5")
                .tally()
                .theory()
                .orElseThrow();
        assertEquals(50, product(theory).amountMillimoles().value(), 1e-9);
        assertEquals(10.0, product(theory).massGrams().value(), 1e-9);
    }

    @Test
    void resolutionAllowsHalf() {
        Theory theory = SmallBook.reaction()
                .but("runs", "Kind", "resolution")
                .tally()
                .theory()
                .orElseThrow();
        assertEquals(10.0, product(theory).massGrams().value(), 1e-9);
    }

    @Test
    void separationHasTheMassChargedAsTheory() {
        // 4.00 g of 95 %: 3.80 g of P.
        Theory theory = component("4.00").tally().theory().orElseThrow();
        assertEquals(3.80, product(theory).massGrams().value(), 1e-9);
        assertTrue(theory.limiting().isEmpty());
    }

    @Test
    void separationAddsUpTheRowsOfAComponent() {
        // (4.00 + 1.00) g × 0.95 = 4.75 g.
        SmallBook book = component("4.00");
        component(book, "1.00");
        assertEquals(
                4.75, product(book.tally().theory().orElseThrow()).massGrams().value(), 1e-9);
    }

    @Test
    void theoryWithMolarMassesAsTypedStandsBeside() {
        // H2O = 18.015: 18.015 g = 1000 mmol, P 200 g. As typed: 18.015 / 20 = 900.75 mmol × 200 = 180.15 g.
        Theory theory = SmallBook.reaction()
                .but("charges", "Formula", "H2O")
                .but("charges", "Molar mass", "20")
                .but("charges", "Actual amount", "18.015")
                .tally()
                .theory()
                .orElseThrow();
        assertEquals(200.0, product(theory).massGrams().value(), 0.01);
        assertEquals(180.15, product(theory).massAsTypedGrams().orElseThrow(), 1e-6);
    }

    @Test
    void wrongMolarMassOfTheProductAloneIsShownBesideToo() {
        // 100 mmol × 18.015 g/mol = 1.8015 g; as typed 100 mmol × 200 g/mol = 20 g.
        Theory theory = SmallBook.reaction()
                .but("products", "Formula", "H2O")
                .tally()
                .theory()
                .orElseThrow();
        assertEquals(1.8015, product(theory).massGrams().value(), 1e-4);
        assertEquals(20.0, product(theory).massAsTypedGrams().orElseThrow(), 1e-9);
    }

    @Test
    void nothingStandsBesideWhereTheTypedMolarMassAgrees() {
        Theory theory = SmallBook.reaction().tally().theory().orElseThrow();
        assertTrue(product(theory).massAsTypedGrams().isEmpty());
    }

    @Test
    void missingAmountLeavesTheoryUncomputed() {
        RunTally tally = with("R", "1", "").tally();
        assertTrue(tally.theory().isEmpty());
        assertTrue(tally.notComputed().stream()
                .anyMatch(n -> n.what().equals("theory") && n.because().equals("the amount of R is not known")));
    }

    @Test
    void unreadableCoefficientLeavesTheoryUncomputed() {
        RunTally tally = with("R", "several", "1").tally();
        assertTrue(tally.theory().isEmpty());
        assertTrue(
                tally.notComputed().stream().anyMatch(n -> n.because().equals("the coefficient of R cannot be read")));
    }

    @Test
    void amountOfZeroLeavesTheoryUncomputedAndTheRestGoesOn() {
        RunTally tally = with("R", "1", "0")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00", "Assay", "90")
                .tally();
        assertTrue(tally.theory().isEmpty());
        assertEquals(16.2, tally.lots().get(0).pureGrams().orElseThrow().value(), 1e-9);
    }

    @Test
    void productWithoutMolarMassHasNoTheory() {
        RunTally tally = SmallBook.reaction().but("products", "Molar mass", "").tally();
        assertTrue(tally.theory().orElseThrow().products().isEmpty());
    }

    /** As typed 900.75 mmol × 0.5 × 200 g/mol = 90.075 g beside 1000 mmol × 0.5 × 200 g/mol = 100 g. */
    @Test
    void coefficientMultipliesTheTheoryAsTypedToo() {
        Theory theory = SmallBook.reaction()
                .but("charges", "Formula", "H2O")
                .but("charges", "Molar mass", "20")
                .but("charges", "Actual amount", "18.015")
                .but("products", "Coefficient", "0.5")
                .tally()
                .theory()
                .orElseThrow();
        assertEquals(100.0, product(theory).massGrams().value(), 0.01);
        assertEquals(90.075, product(theory).massAsTypedGrams().orElseThrow(), 1e-6);
    }

    @Test
    void whatIsMissingForATheoryIsSaid() {
        assertSaid(SmallBook.reaction().but("charges", "Coefficient", ""), "theory", "no charge has a coefficient");
        assertSaid(with("R", "1", "0"), "theory", "the amount of R is 0");
        assertSaid(SmallBook.reaction().but("products", "Molar mass", ""), "theory of P", "no molar mass");
        assertSaid(
                SmallBook.reaction().but("products", "Coefficient", "some"),
                "theory of P",
                "its coefficient cannot be read");
        assertSaid(component("4.00").but("charges", "Material", "Q"), "theory of P", "no charge of that name");
        assertSaid(component("0"), "theory of P", "its amount is 0 or not known");
    }

    /** Of two portions one could not be read: what was put in is not known. */
    @Test
    void portionOfAComponentThatCannotBeReadLeavesItOpen() {
        SmallBook book = component("4.00");
        component(book, "a spatula");
        assertTrue(book.tally().theory().isEmpty());
    }

    @Test
    void otherComponentKeepsItsTheory() {
        SmallBook book = component("4.00").row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "200");
        assertEquals(1, book.tally().theory().orElseThrow().products().size());
        assertSaid(book, "theory of Q", "no charge of that name");
    }

    private static void assertSaid(SmallBook book, String what, String because) {
        List<NotComputed> said = book.tally().notComputed();
        assertTrue(
                said.stream().anyMatch(n -> n.what().equals(what) && n.because().equals(because)), said::toString);
    }

    private static SmallBook with(String material, String coefficient, String millimoles) {
        return SmallBook.reaction()
                .row("charges", "Material", material, "Role", "reagent", "Molar mass", "50")
                .but("charges", "Coefficient", coefficient)
                .but("charges", "Actual amount", millimoles)
                .but("charges", "Actual unit", "mmol");
    }

    private static SmallBook secondPortion(String grams) {
        return SmallBook.reaction()
                .row("charges", "Material", "S", "Role", "substrate", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Actual amount", grams)
                .but("charges", "Actual unit", "g");
    }

    private static SmallBook component(String grams) {
        SmallBook book = SmallBook.empty()
                .but("runs", "Kind", "separation")
                .row("products", "Product", "P", "Wanted", "yes", "Molar mass", "200");
        component(book, grams);
        return book;
    }

    private static void component(SmallBook book, String grams) {
        book.row("charges", "Material", "P", "Role", "component", "Molar mass", "200", "Assay", "95")
                .but("charges", "Actual amount", grams)
                .but("charges", "Actual unit", "g");
    }

    private static List<String> limiting(Theory theory) {
        return theory.limiting().stream().map(Theory.Limiting::material).toList();
    }

    private static ProductTheory product(Theory theory) {
        return theory.products().get(0);
    }
}
