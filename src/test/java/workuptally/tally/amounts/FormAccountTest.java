package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.measure.Readings;

/** A base of 150 g/mol, isolated, beside its hemisulfate of 398 g/mol, which holds two of the base. */
class FormAccountTest {
    private static FormAccount forms(SmallBook book) {
        return new FormAccount(book.run(), new MolarMassAccount(book.run(), SmallBook.substances()));
    }

    private static SmallBook book() {
        return SmallBook.empty()
                .row("charges", "Material", "S", "Role", "substrate", "Molar mass", "100", "Coefficient", "1")
                .row("products", "Product", "base", "Wanted", "yes", "Molar mass", "150", "Skeleton", "S 1")
                .row("products", "Product", "sulfate", "Molar mass", "398", "Skeleton", "S 2", "Form of", "base");
    }

    private static Content content(String substance) {
        Readings readings = new Readings();
        return new Content(
                substance,
                Content.Kind.MEASURED,
                Optional.of(readings.exact(3.98)),
                Optional.of(readings.exact(10)),
                OptionalDouble.of(4.2),
                OptionalDouble.of(7),
                "HPLC");
    }

    @Test
    void gramOfASaltIsWhatItHoldsOfTheBase() {
        // 398 g of the salt are 300 g of the base
        assertEquals(300.0 / 398, forms(book()).gramsPerGram("Sulfate").orElseThrow(), 1e-12);
        assertEquals(1, forms(book()).gramsPerGram("base").orElseThrow(), 0);
        assertEquals(1, forms(book()).gramsPerGram("another").orElseThrow(), 0);
        // half of it where the skeletons tell nothing: one mole for one
        assertEquals(
                150.0 / 398,
                forms(book().but("products", "Skeleton", "T 2"))
                        .gramsPerGram("sulfate")
                        .orElseThrow(),
                1e-12);
        assertTrue(forms(book().but("products", "Molar mass", ""))
                .gramsPerGram("sulfate")
                .isEmpty());
    }

    @Test
    void gramOfTheBaseIsWhatItMakesOfTheSalt() {
        // isolated as the hemisulfate: 300 g of the base make 398 g
        SmallBook book = book().but("products", "Form of", "").but("products", "Wanted", "yes");
        book.first("products", "Form of", "sulfate").first("products", "Wanted", "no");
        assertEquals(398.0 / 300, forms(book).gramsPerGram("base").orElseThrow(), 1e-12);
    }

    @Test
    void contentOfASaltCountsAsTheBase() {
        // 3.98 g, 10 mmol: 3.00 g and 20 mmol of the base
        Content counted = forms(book()).counted(content("sulfate")).orElseThrow();
        assertEquals("base", counted.substance());
        assertEquals(3.00, counted.massGrams().orElseThrow().value(), 1e-12);
        assertEquals(20, counted.amountMillimoles().orElseThrow().value(), 1e-12);
        assertEquals(4.2 * 300 / 398, counted.upperBoundGrams().orElseThrow(), 1e-12);
        assertEquals("HPLC as sulfate", counted.evidence());
        Content own = content("base");
        assertEquals(Optional.of(own), forms(book()).counted(own));
        assertEquals(
                Optional.empty(),
                forms(book().but("products", "Molar mass", "")).counted(content("sulfate")));
    }

    @Test
    void contentWithoutABoundHasNoneAsTheBase() {
        Content unknown = Content.unknown("sulfate", "not assayed");
        assertTrue(
                forms(book()).counted(unknown).orElseThrow().upperBoundGrams().isEmpty());
    }

    @Test
    void formsOfOneSubstanceAreTheSame() {
        assertTrue(forms(book()).same("base", "Sulfate"));
        assertTrue(forms(book()).same("S", "s"));
        assertFalse(forms(book()).same("base", "S"));
    }
}
