package workuptally.tally.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.tally.RunTally;

/** O1 is washed, its water A2 holds 0.50 g of P by assay, and gives the lot C1, 18.00 g at 90 %: 16.20 + 0.50 g came of O1. */
class FoundDownstreamTest {
    private static SmallBook book(String second) {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", second, "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("workup", "Step", "3", "Operation", "concentrate", "From", "O2", "Gives other", "C1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.00", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Net", "50.00", "Status", "kept")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00", "Assay", "90")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "0.30", "Unit", "g")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "0.50", "Unit", "g");
    }

    private static Optional<FoundDownstream.Amount> of(SmallBook book, String label) {
        RunTally tally = book.tally();
        return new FoundDownstream(tally.run(), tally.layers(), tally.lots())
                .of(label, tally.run().products().get(0));
    }

    @Test
    void lotAndLayersMadeFromAPortionAloneCount() {
        FoundDownstream.Amount found = of(book("wash"), "O1").orElseThrow();
        assertEquals(16.70, found.grams().value(), 1e-9);
        assertEquals(List.of("C1", "A2"), found.labels());
    }

    @Test
    void whatIsOnlyBoundedOrOfAnotherSubstanceDoesNotCount() {
        assertEquals(
                List.of("C1"),
                of(book("wash").but("assays", "Result", "<0.50"), "O1")
                        .orElseThrow()
                        .labels());
        assertEquals(
                List.of("C1"),
                of(book("wash").but("assays", "Substance", "S"), "O1")
                        .orElseThrow()
                        .labels());
        SmallBook other = book("wash")
                .row("products", "Product", "Q", "Wanted", "no", "Molar mass", "200")
                .but("isolated", "Product", "Q");
        assertEquals(List.of("A2"), of(other, "O1").orElseThrow().labels());
    }

    @Test
    void nothingIsMadeOfAWaterThatEndsTheWorkup() {
        assertTrue(of(book("wash"), "A2").isEmpty());
    }

    @Test
    void aQuenchMakesWhatFollowsSomethingElse() {
        assertTrue(of(book("quench"), "O1").isEmpty());
    }
}
