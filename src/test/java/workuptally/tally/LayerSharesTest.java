package workuptally.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.book.BookReader;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.model.Product;
import workuptally.reference.Reference;
import workuptally.tally.amounts.Substances;

/** The invented demo week: what its layers hold is in its tables, the way of the layers in its steps. */
class LayerSharesTest {
    private static LayerShares shares(String run, String product) throws Exception {
        Book book = new BookReader().read(Path.of("input-templates", "demo-week"));
        RunTally tally = book.runs().stream()
                .filter(r -> r.id().equals(run))
                .map(new RunTallying(book.limits(), new Substances(Reference.load()))::tally)
                .findFirst()
                .orElseThrow();
        Product wanted = tally.run().product(product).orElseThrow();
        return new LayerShares(tally, wanted);
    }

    @Test
    void stretchWithoutAssayPassesOnWhatWasFoundAfterIt() throws Exception {
        LayerShares shares = shares("R26-050", "ethyl benzoate");
        double isolated = shares.foundPercent("CR1").orElseThrow();
        assertTrue(shares.foundPercent("O5").isEmpty());
        assertEquals(isolated, shares.passingPercent("O5"), 1e-9);
        double washed = shares.foundPercent("A2").orElseThrow()
                + shares.foundPercent("A3").orElseThrow();
        assertEquals(isolated + washed, shares.passingPercent("O1"), 1e-9);
    }

    @Test
    void portionWithAnAssayPassesThatWhateverWasFoundAfterIt() throws Exception {
        LayerShares shares = shares("R26-041", "benzoic acid");
        assertEquals(shares.foundPercent("A2").orElseThrow(), shares.passingPercent("A2"), 1e-9);
    }

    @Test
    void shareOfALotIsItsProductAndNotItsMass() throws Exception {
        LayerShares shares = shares("R26-046", "1-(4-methoxyphenyl)ethanol");
        // 109.3 % of theory weighed, 86.1 % of it product, by the tables of the week
        assertEquals(109.3 * 0.861, shares.foundPercent("CR1").orElseThrow(), 0.3);
    }

    @Test
    void listHoldsEveryPortionOnceInTheOrderOfTheSteps() throws Exception {
        List<String> labels = shares("R26-041", "benzocaine").list().stream()
                .map(LayerShares.Share::label)
                .toList();
        assertEquals("RM", labels.get(0));
        assertEquals(labels.size(), labels.stream().distinct().count());
        assertTrue(labels.indexOf("O1") < labels.indexOf("O2"));
        assertTrue(labels.containsAll(List.of("A1", "A5", "D-04")));
    }

    @Test
    void labelThatNoStepKnowsHasNoShare() throws Exception {
        LayerShares shares = shares("R26-041", "benzocaine");
        assertTrue(shares.foundPercent("nowhere").isEmpty());
        assertEquals(0, shares.passingPercent("nowhere"), 0);
        assertFalse(shares.list().isEmpty());
    }

    /**
     * An extraction and a second one of its water, both extracts together stripped to C1: 16.20 g of P in it by 90 % of 18.00 g, 1.00 g in
     * the water A2, of 20.0 g theory.
     */
    private static SmallBook extracted() {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "toluene", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "extract", "From", "A1", "Material", "toluene", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("workup", "Step", "3", "Operation", "combine", "From", "O1+O2", "Gives organic", "O3")
                .row("workup", "Step", "4", "Operation", "strip", "From", "O3", "Gives other", "C1+D1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O3", "Net", "18.00")
                .but("isolated", "Assay", "90")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "100", "Status", "kept")
                .row("assays", "Sample", "A2", "Substance", "p", "Method", "HPLC", "Result", "1.00", "Unit", "g");
    }

    private static LayerShares shares(SmallBook book) {
        RunTally tally = book.tally();
        return new LayerShares(tally, tally.run().products().get(0));
    }

    @Test
    void sharesArePercentOfTheory() {
        LayerShares shares = shares(extracted());
        assertEquals("P", shares.product().name());
        assertTrue(shares.isFound());
        assertEquals(81, shares.foundPercent("C1").orElseThrow(), 1e-9);
        assertEquals(5, shares.foundPercent("A2").orElseThrow(), 1e-9);
        assertTrue(shares.foundPercent("O3").isEmpty());
    }

    @Test
    void whatComesTogetherAgainIsCountedOnce() {
        LayerShares shares = shares(extracted());
        assertEquals(81, shares.passingPercent("O1"), 1e-9);
        assertEquals(86, shares.passingPercent("A1"), 1e-9);
        assertEquals(86, shares.passingPercent("RM"), 1e-9);
        assertEquals(0, shares.passingPercent("D1"), 0);
    }

    @Test
    void labelGivenTwiceLeadsForwardOnly() {
        SmallBook book = extracted()
                .row("workup", "Step", "5", "Operation", "wash", "From", "A2", "Material", "toluene", "Volume", "20")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A3");
        book.first("layers", "Layer", "A3").first("assays", "Sample", "A3");
        LayerShares shares = shares(book);
        assertEquals(5, shares.passingPercent("A2"), 1e-9);
        assertEquals(86, shares.passingPercent("RM"), 1e-9);
    }

    @Test
    void listGivesBothFiguresOfEveryPortion() {
        List<LayerShares.Share> list = shares(extracted()).list();
        assertEquals(
                List.of("RM", "O1", "A1", "O2", "A2", "O3", "C1", "D1"),
                list.stream().map(LayerShares.Share::label).toList());
        assertEquals(5, list.get(4).foundPercent().orElseThrow(), 1e-9);
        assertEquals(5, list.get(4).passingPercent(), 1e-9);
        assertTrue(list.get(5).foundPercent().isEmpty());
        assertEquals(81, list.get(5).passingPercent(), 1e-9);
    }

    @Test
    void lotCountsOnlyWithAnAssayOfThatProduct() {
        assertTrue(shares(extracted().but("isolated", "Assay", ""))
                .foundPercent("C1")
                .isEmpty());
        SmallBook other = extracted()
                .but("isolated", "Product", "Q")
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "100", "Coefficient", "1");
        assertTrue(shares(other).foundPercent("C1").isEmpty());
        assertEquals(5, shares(other).passingPercent("RM"), 1e-9);
    }

    @Test
    void purifiedLotWithoutAnAssayIsWeighedAndNotFound() {
        SmallBook book = extracted().but("isolated", "Assay", "").but("isolated", "Stage", "purified");
        assertTrue(shares(book).foundPercent("C1").isEmpty());
    }

    @Test
    void shareIsOfTheTheoryOfItsOwnProduct() {
        // Q: 100 mmol of 250 g/mol, 25.0 g; 90 % of 18.00 g is 64.8 % of that
        SmallBook book = extracted()
                .but("isolated", "Product", "q")
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "250", "Coefficient", "1");
        RunTally tally = book.tally();
        LayerShares shares = new LayerShares(tally, tally.run().products().get(1));
        assertEquals(64.8, shares.foundPercent("C1").orElseThrow(), 1e-9);
        assertEquals("Q", shares.product().name());
    }

    @Test
    void productOfALotWithoutATheoryHasNoShare() {
        SmallBook book = extracted().first("charges", "Actual amount", "");
        assertTrue(shares(book).foundPercent("C1").isEmpty());
    }

    @Test
    void withoutAnAssayNothingIsFound() {
        LayerShares shares = shares(extracted().but("isolated", "Assay", "").but("assays", "Substance", "another"));
        assertFalse(shares.isFound());
        assertEquals(0, shares.passingPercent("RM"), 0);
    }

    @Test
    void stepWithoutOutcomeIsNoWay() {
        SmallBook book = extracted().row("workup", "Step", "6", "Operation", "wash", "From", "X8+A2", "Volume", "20");
        List<String> labels =
                shares(book).list().stream().map(LayerShares.Share::label).toList();
        assertFalse(labels.contains("X8"));
        assertEquals(8, labels.size());
    }
}
