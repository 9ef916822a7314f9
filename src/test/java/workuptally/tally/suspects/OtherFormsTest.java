package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.model.Field.Entered;
import workuptally.model.Place;

/** A salt by its name and the base by its formula. Standard atomic weights of IUPAC 2021: Cl 35.45, H 1.008, C 12.011, N 14.007, Na 22.990. */
class OtherFormsTest {
    private static List<Hypothesis> forms(String name, String formula, String molarMass) {
        SmallBook small = SmallBook.empty()
                .row("products", "Product", name, "Wanted", "yes", "Formula", formula, "Molar mass", molarMass);
        Book book = small.book();
        return new OtherForms(
                        book.runs().get(0),
                        SmallBook.substances(),
                        new EntryChecks(book, SmallBook.substances(), new TareRegister(List.of())))
                .list();
    }

    private static List<String> formulas(String name, String formula) {
        return forms(name, formula, "").stream().map(Hypothesis::suggested).toList();
    }

    @Test
    void aHydrochlorideHoldsTheHydrogenChlorideOfItsName() {
        // C7H9N and one, two or three HCl; half of one is no formula
        assertEquals(List.of("C7H10ClN", "C7H11Cl2N", "C7H12Cl3N"), formulas("benzylamine hydrochloride", "C7H9N"));
    }

    @Test
    void aSodiumSaltHasLostAHydrogenForEachSodium() {
        // benzoic acid C7H6O2 has six hydrogens to lose
        assertEquals(List.of("C7H5NaO2", "C7H4Na2O2", "C7H3Na3O2"), formulas("benzoic acid sodium salt", "C7H6O2"));
        // oxalic acid has two
        assertEquals(List.of("C2HNaO4", "C2Na2O4"), formulas("oxalic acid sodium salt", "C2H2O4"));
    }

    @Test
    void aHydrateHoldsWholeWaters() {
        List<String> hydrates = formulas("citric acid monohydrate", "C6H8O7");
        assertEquals("C6H10O8", hydrates.get(0));
        assertEquals(true, hydrates.stream().noneMatch(f -> f.contains(".")));
    }

    @Test
    void aNameThatItsFormulaShowsNeedsNoOther() {
        assertEquals(List.of(), formulas("benzylamine hydrochloride", "C7H10ClN"));
        assertEquals(List.of(), formulas("benzylamine", "C7H9N"));
    }

    @Test
    void theMolarMassGoesWithTheFormula() {
        Hypothesis salt = forms("benzylamine hydrochloride", "C7H9N", "107.16").get(0);
        assertEquals(UsualSlip.SALT_FOR_BASE, salt.slip());
        assertEquals("formula of benzylamine hydrochloride", salt.what());
        assertEquals("C7H9N", salt.typed());
        assertEquals(
                List.of("products.csv line 2, Formula", "products.csv line 2, Molar mass"),
                salt.places().stream().map(Place::inWords).toList());
        // 7 × 12.011 + 10 × 1.008 + 35.45 + 14.007 = 143.614
        Entered molarMass = salt.changes().numbers().get(0).field().entered().orElseThrow();
        assertEquals("143.61", molarMass.asTyped());
        Hypothesis withoutMolarMass =
                forms("benzylamine hydrochloride", "C7H9N", "").get(0);
        assertEquals(List.of(), withoutMolarMass.changes().numbers());
        assertEquals(1, withoutMolarMass.places().size());
    }
}
