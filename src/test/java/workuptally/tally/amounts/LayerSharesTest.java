package workuptally.tally.amounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import workuptally.book.BookReader;
import workuptally.model.Book;
import workuptally.model.Product;
import workuptally.reference.Reference;
import workuptally.tally.LayerShares;
import workuptally.tally.RunTally;
import workuptally.tally.RunTallying;

/** The invented demo week: what its layers hold is in its tables, the way of the layers in its steps. */
class LayerSharesTest {
    private Book book;

    @BeforeEach
    void read() throws Exception {
        book = new BookReader().read(Path.of("input-templates", "demo-week"));
    }

    private LayerShares shares(String run, String product) {
        RunTally tally = book.runs().stream()
                .filter(r -> r.id().equals(run))
                .map(new RunTallying(book.limits(), new Substances(Reference.load()))::tally)
                .findFirst()
                .orElseThrow();
        Product wanted = tally.run().product(product).orElseThrow();
        return new LayerShares(tally, wanted);
    }

    @Test
    void stretchWithoutAssayPassesOnWhatWasFoundAfterIt() {
        LayerShares shares = shares("R26-050", "ethyl benzoate");
        double isolated = shares.foundPercent("CR1").orElseThrow();
        assertTrue(shares.foundPercent("O5").isEmpty());
        assertEquals(isolated, shares.passingPercent("O5"), 1e-9);
        double washed = shares.foundPercent("A2").orElseThrow()
                + shares.foundPercent("A3").orElseThrow();
        assertEquals(isolated + washed, shares.passingPercent("O1"), 1e-9);
    }

    @Test
    void portionWithAnAssayPassesThatWhateverWasFoundAfterIt() {
        LayerShares shares = shares("R26-041", "benzoic acid");
        assertEquals(shares.foundPercent("A2").orElseThrow(), shares.passingPercent("A2"), 1e-9);
    }

    @Test
    void shareOfALotIsItsProductAndNotItsMass() {
        LayerShares shares = shares("R26-046", "1-(4-methoxyphenyl)ethanol");
        // 109.3 % of theory weighed, 86.1 % of it product, by the tables of the week
        assertEquals(109.3 * 0.861, shares.foundPercent("CR1").orElseThrow(), 0.3);
    }

    @Test
    void listHoldsEveryPortionOnceInTheOrderOfTheSteps() {
        List<String> labels = shares("R26-041", "benzocaine").list().stream()
                .map(LayerShares.Share::label)
                .toList();
        assertEquals("RM", labels.get(0));
        assertEquals(labels.size(), labels.stream().distinct().count());
        assertTrue(labels.indexOf("O1") < labels.indexOf("O2"));
        assertTrue(labels.containsAll(List.of("A1", "A5", "D-04")));
    }

    @Test
    void labelThatNoStepKnowsHasNoShare() {
        LayerShares shares = shares("R26-041", "benzocaine");
        assertTrue(shares.foundPercent("nowhere").isEmpty());
        assertEquals(0, shares.passingPercent("nowhere"), 0);
        assertFalse(shares.list().isEmpty());
    }
}
