package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.FindingCode;
import workuptally.model.Product;
import workuptally.report.view.wording.Wording;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;

/** 100 mmol S give the base B (150 g/mol), isolated as such or as its salt H (190 g/mol): 15.0 g or 19.0 g in theory. */
class FormsOfOneProductTest {
    @Test
    void theoryIsInTheFormIsolated() {
        RunTally tally = saltIsolated().tally();
        assertEquals(1, tally.theory().orElseThrow().products().size());
        assertEquals(
                19.0, tally.theory().orElseThrow().products().get(0).massGrams().value(), 1e-9);
        assertEquals(90.0, tally.yields().get(0).percent().value(), 1e-9);
    }

    @Test
    void assayOfTheBaseCountsAsTheSalt() {
        // 0.75 g of B = 5 mmol = 0.95 g of H, 5 % of theory; 90 + 5 = 95 % of the balance.
        RunTally tally = saltIsolated().tally();
        Content content = tally.layer("A1").orElseThrow().contents().get(0);
        assertEquals("H", content.substance());
        assertEquals(0.95, content.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(5.0, content.percentOf().orElseThrow(), 1e-9);
        assertEquals("HPLC 0.75 g as B", content.evidence());
        assertEquals(95.0, tally.closures().get(0).percent().value(), 1e-9);
        assertEquals(1, tally.layer("A1").orElseThrow().contents().size());
    }

    @Test
    void assaysOfBothFormsAreReadingsOfOneThing() {
        // 0.95 g of H is what 0.75 g of B says: two readings that agree.
        RunTally tally = saltIsolated()
                .row("assays", "Sample", "A1", "Substance", "H", "Method", "HPLC", "Result", "0.95", "Unit", "g")
                .tally();
        Content content = tally.layer("A1").orElseThrow().contents().get(0);
        assertEquals(0.95, content.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(1, tally.layer("A1").orElseThrow().contents().size());
    }

    @Test
    void lotOfAnotherFormCountsAsTheOneTheWorkupIsolated() {
        // B is the crude, so theory is 15.0 g; 15.20 g of H = 80 mmol = 12.0 g of B: 80 %.
        RunTally tally = forms("13.50", "B")
                .row("isolated", "Lot", "B1", "Product", "H", "Stage", "purified", "From", "C1", "Net", "15.20")
                .but("isolated", "Assay", "100")
                .tally();
        assertEquals(90.0, tally.yields().get(0).percent().value(), 1e-9);
        assertEquals(80.0, tally.yields().get(1).percent().value(), 1e-9);
        LotTally salt = tally.lots().get(1);
        assertEquals("B", salt.product());
        assertEquals("H", salt.lot().product());
        assertEquals(80.0, salt.overTheoryPercent().orElseThrow().value(), 1e-9);
    }

    @Test
    void assayRowOfALotMayBeOfEitherForm() {
        // 75 % w/w of B in a lot of H: 75 × 190 / 150 = 95 % w/w of H; 17.10 × 0.95 / 19.0 = 85.5 %.
        RunTally tally = saltIsolated()
                .but("isolated", "Assay", "")
                .row("assays", "Sample", "C1", "Substance", "B", "Method", "HPLC", "Result", "75", "Unit", "% w/w")
                .tally();
        assertEquals(0.95, tally.lots().get(0).productFraction().orElseThrow().value(), 1e-9);
        assertEquals(85.5, tally.yields().get(0).percent().value(), 1e-9);
    }

    @Test
    void saltOfTwoMoleculesCountsTwice() {
        // B₂·H₂X of 400 g/mol, 2.00 g = 5 mmol = 10 mmol of B = 1.50 g.
        RunTally tally = forms("12.00", "B")
                .first("products", "Skeleton", "S 1")
                .but("products", "Molar mass", "400")
                .but("products", "Skeleton", "S 2")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "H", "Method", "HPLC", "Result", "2.00", "Unit", "g")
                .tally();
        Content content = tally.layer("A1").orElseThrow().contents().get(0);
        assertEquals(1.50, content.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(10.0, content.amountMillimoles().orElseThrow().value(), 1e-9);
    }

    @Test
    void formIsolatedHasThePkaOfItsBase() {
        Product salt = saltIsolated().run().product("H").orElseThrow();
        assertTrue(salt.wanted());
        assertEquals(Product.Character.BASE, salt.partitioning().character().orElseThrow());
        assertEquals(9.3, salt.partitioning().pKa().entered().orElseThrow().value(), 1e-9);
    }

    @Test
    void formWithoutMolarMassIsSaidAndNotCounted() {
        RunTally tally = saltIsolated().first("products", "Molar mass", "").tally();
        assertTrue(tally.layer("A1").orElseThrow().contents().stream()
                .noneMatch(c -> c.massGrams().isPresent()));
        assertTrue(tally.notComputed().stream().anyMatch(n -> n.what().equals("B as H")));
    }

    @Test
    void otherFormIsNoPlaceOfTheRest() {
        assertTrue(saltIsolated().tally().closures().get(0).candidates().stream()
                .noneMatch(c -> c.place().equals("B")));
    }

    @Test
    void formOfSomethingElseIsAsked() {
        SmallBook book = saltIsolated().but("products", "Form of", "b base");
        assertEquals(
                "read 'b base'",
                Wording.POINT.of(book.book().findings().stream()
                        .filter(f -> f.code() == FindingCode.FORM_OF_UNKNOWN)
                        .findFirst()
                        .orElseThrow()
                        .seen()));
    }

    @Test
    void twoFormsThatNameEachOtherAreOneSubstance() {
        RunTally tally = saltIsolated().first("products", "Form of", "H").tally();
        assertEquals(90.0, tally.yields().get(0).percent().value(), 1e-9);
        assertEquals(1, tally.yields().size());
    }

    @Test
    void assayOfOneFormAsksForNoOther() {
        String conditions = saltIsolated().reviewOfRun().decision("A1").orElseThrow().conditions().stream()
                .map(c -> Wording.POINT.of(c.evidence()))
                .collect(Collectors.joining("; "));
        assertFalse(conditions.contains("an assay for"), conditions);
        assertEquals(List.of(), saltIsolated().reviewOfRun().nextTests());
    }

    private static SmallBook saltIsolated() {
        return forms("17.10", "H")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "50.00", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "B", "Method", "HPLC", "Result", "0.75", "Unit", "g");
    }

    private static SmallBook forms(String grams, String form) {
        return SmallBook.empty()
                .row(
                        "products",
                        "Product",
                        "B",
                        "Wanted",
                        "yes",
                        "Molar mass",
                        "150",
                        "Character",
                        "base",
                        "pKa",
                        "9.3")
                .row("products", "Product", "H", "Molar mass", "190", "Form of", "B")
                .row("charges", "Material", "S", "Role", "substrate", "Molar mass", "100", "Coefficient", "1")
                .but("charges", "Actual amount", "10.00")
                .but("charges", "Actual unit", "g")
                .row("isolated", "Lot", "C1", "Product", form, "Stage", "crude", "Net", grams, "Assay", "100");
    }
}
