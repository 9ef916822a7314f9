package workuptally.book.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.model.Run;

/** One name written in several ways is one thing wherever it stands; ways of writing are common practice. */
class SameNamesTest {
    private static final String PRODUCT = "4-(4-fluorobenzoyl)morpholine";

    private static SmallBook book() {
        return SmallBook.reaction()
                .row("products", "Product", PRODUCT)
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1");
    }

    private static Run run(SmallBook book) {
        return book.book().runs().get(0);
    }

    private static List<String> codes(Book book) {
        return book.findings().stream().map(f -> f.code().word()).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                PRODUCT,
                "4-(4-Fluorobenzoyl)morpholine",
                "4-(4-Fluorobenzoyl)Morpholine",
                "4-(4-fluorobenzoyl) morpholine",
                "4-(4-fluorobenzoyl)-morpholine",
                "4–(4–fluorobenzoyl)morpholine"
            })
    void aSubstanceIsSpelledAsTheProduct(String typed) {
        Run run = run(book().row("assays", "Sample", "A1", "Substance", typed, "Result", "1", "Unit", "g")
                .row("nmr-assays", "Sample", "A1", "Substance", typed)
                .row("isolated", "Lot", "C1", "Product", typed)
                .first("layers", "Composition", "water 99 %; " + typed + " 1 %"));
        assertEquals(PRODUCT, run.assays().get(0).substance());
        assertEquals(PRODUCT, run.nmrAssays().get(0).substance());
        assertEquals(PRODUCT, run.lots().get(0).product());
        assertEquals(PRODUCT, run.layers().get(0).composition().get(1).substance());
    }

    @ParameterizedTest
    @ValueSource(strings = {"O1", "o1", "O 1", "O-1", "o–1"})
    void aLabelIsSpelledAsTheStepThatGivesIt(String typed) {
        Run run = run(book().row("isolated", "Lot", "C1", "Product", PRODUCT, "From", typed)
                .row("workup", "Step", "2", "Operation", "dry", "From", typed, "Gives other", "O2")
                .row("assays", "Sample", typed, "Result", "1", "Unit", "g"));
        assertEquals(List.of("O1"), run.lots().get(0).from());
        assertEquals(List.of("O1"), run.steps().get(1).from());
        assertEquals("O1", run.assays().get(0).sample());
    }

    @Test
    void aLotMayNameSeveralLayersOfLaterRows() {
        Run run = run(book().row("isolated", "Lot", "C1", "Product", PRODUCT, "From", "o1/o2")
                .row("workup", "Step", "2", "Operation", "extract", "From", "A1", "Gives other", "O2"));
        assertEquals(List.of("O1", "O2"), run.lots().get(0).from());
    }

    @ParameterizedTest
    @CsvSource({"A1-1, A11", "A1.1, A11", "A11, A1-1"})
    void whatPartsTwoNumbersCounts(String label, String typed) {
        Run run = run(book().row("layers", "Layer", label, "Phase", "aqueous")
                .row("assays", "Sample", typed, "Result", "1", "Unit", "g"));
        assertEquals(typed, run.assays().get(0).sample());
    }

    @ParameterizedTest
    @CsvSource({"reaction mixture", "rm", "RM"})
    void aSampleOfTheReactionMixtureIsOne(String typed) {
        Run run = run(book().row("assays", "Sample", typed, "Result", "1", "Unit", "g"));
        assertEquals("RM", run.assays().get(0).sample());
    }

    @Test
    void aLabelTwiceIsOneHoweverItIsWritten() {
        assertEquals(
                List.of("layer-duplicate"),
                codes(book().row("layers", "Layer", "a 1", "Phase", "aqueous").book()));
        assertEquals(
                List.of("lot-duplicate"),
                codes(book().row("isolated", "Lot", "C1", "Product", PRODUCT)
                        .row("isolated", "Lot", "c1", "Product", PRODUCT)
                        .book()));
    }

    /** Both count, so that a container is never fuller than its account. */
    @Test
    void aTransferTwiceIsAskedAbout() {
        Book book = book().row("containers", "Container", "W-1", "Waste stream", "aqueous", "Capacity", "10")
                .row("transfers", "Transfer", "T1", "Material", "water", "Container", "W-1", "Amount", "50")
                .row("transfers", "Transfer", "t1", "Material", "water", "Container", "W-1", "Amount", "50")
                .book();
        assertEquals(List.of("transfer-duplicate"), codes(book));
        assertEquals(2, book.transfers().size());
    }

    @Test
    void aFormIsThatOfTheProductItMeans() {
        Run run = run(book().row("products", "Product", "its salt", "Form of", "4-(4-Fluorobenzoyl)-morpholine"));
        assertTrue(run.products().stream().anyMatch(p -> p.formOf().equals(PRODUCT)));
    }

    @Test
    void aSeriesIsOneHoweverItIsWritten() {
        Book book = book().first("runs", "Series", "Amide-2")
                .history("Series", "amide 2", "Yield", "80")
                .book();
        assertEquals("Amide-2", book.history().get(0).series());
    }
}
