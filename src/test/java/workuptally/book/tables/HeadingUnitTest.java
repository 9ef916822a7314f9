package workuptally.book.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Assay;
import workuptally.model.Book;
import workuptally.model.Field;

/** A unit over a number against the unit column beside it; factors by definition of the prefixes. */
class HeadingUnitTest {
    private static List<String> codes(Book book) {
        return book.findings().stream().map(f -> f.code().word()).toList();
    }

    private static Assay assay(Book book) {
        return book.runs().get(0).assays().get(0);
    }

    private static SmallBook assay(String heading, String result, String unit) {
        return SmallBook.reaction()
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", heading, result, "Unit", unit);
    }

    @ParameterizedTest
    @CsvSource({
        "Result (ug/mL), mg/mL",
        "Result (% w/w), mg/mL",
        "Result (mg/mL), % w/w",
        "Result (%), mg/mL",
        "Result [g], mmol"
    })
    void aResultUnderAnotherUnitThanBesideItIsNotUsed(String heading, String unit) {
        Book book = assay(heading, "1.20", unit)
                .row("assays", "Sample", "A2", heading, "3", "Unit", unit)
                .book();
        assertEquals(List.of("unit-contradiction"), codes(book));
        assertTrue(assay(book).result().isUnreadable());
    }

    @ParameterizedTest
    @CsvSource({
        "Result (g/L), 1.20, mg/mL",
        "Result (ug/mL), 1.20 mg/mL, mg/mL",
        "Result (ug/mL), 1200, ''",
        "Result (%), 1.20, % w/w",
        "Result, 1.20, mg/mL"
    })
    void unitsThatSayTheSameAreNoContradiction(String heading, String result, String unit) {
        Book book = assay(heading, result, unit).book();
        assertEquals(List.of(), codes(book));
        assertEquals(1.2, assay(book).result().entered().orElseThrow().value(), 1e-12);
    }

    @Test
    void anAmountUnderAnotherUnitThanBesideItIsNotUsed() {
        Book book = SmallBook.empty()
                .row("charges", "Material", "S", "Actual amount (mg)", "7.00", "Actual unit", "g")
                .row("charges", "Material", "T", "Actual amount (mg)", "7.00 g", "Actual unit", "g")
                .row("charges", "Material", "U", "Actual amount (mg)", "7.00", "Actual unit", "mg")
                .book();
        assertEquals(List.of("unit-contradiction"), codes(book));
        List<Field> values = book.runs().get(0).charges().stream()
                .map(c -> c.quantity().actual().orElseThrow().value())
                .toList();
        assertTrue(values.get(0).isUnreadable());
        assertEquals(7, values.get(1).entered().orElseThrow().value(), 1e-12);
        assertEquals(0.007, values.get(2).entered().orElseThrow().value(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"Net (g), mg, unit-contradiction", "Net (mg), mg, ''", "Net, mg, ''"})
    void aRowOfUnitsMustNotSayOtherwiseThanItsHeading(String heading, String unit, String code) {
        Book book = SmallBook.empty()
                .row("layers", "Run", "", heading, unit)
                .row("layers", "Layer", "A1", "Phase", "aqueous", heading, "500")
                .book();
        assertEquals(code.isEmpty() ? List.of() : List.of(code), codes(book));
        Field net = book.runs().get(0).layers().get(0).weighing().netGrams();
        assertEquals(code.isEmpty(), net.entered().filter(n -> n.value() == 0.5).isPresent());
    }

    @Test
    void aRowOfUnitsMustNotSayOtherwiseThanTheUnitColumn() {
        Book book = SmallBook.empty()
                .row("charges", "Run", "", "Actual amount", "mg")
                .row("charges", "Material", "S", "Actual amount", "7.00", "Actual unit", "g")
                .book();
        assertEquals(List.of("unit-contradiction"), codes(book));
        assertEquals("charges.csv line 2, mg", book.findings().get(0).place().inWords());
    }
}
