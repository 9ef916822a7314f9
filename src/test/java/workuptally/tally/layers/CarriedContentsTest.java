package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Layer;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Content.Kind;

/** O1 holds 2 g of P by its own assay and is worked up further. */
class CarriedContentsTest {
    private static SmallBook started() {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "toluene", "Volume", "90")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Status", "consumed")
                .row("assays", "Sample", "O1", "Substance", "P", "Method", "HPLC", "Result", "20", "Unit", "mg/mL");
    }

    private static SmallBook then(SmallBook book, String step, String operation, String from, String other) {
        return book.row("workup", "Step", step, "Operation", operation, "From", from, "Gives other", other);
    }

    private static SmallBook layer(SmallBook book, String label, String phase) {
        return book.row("layers", "Layer", label, "Phase", phase, "Volume", "50", "Status", "kept");
    }

    private static Optional<Content> of(SmallBook book, String label, String substance) {
        return book.tally().layer(label).orElseThrow().contents().stream()
                .filter(c -> c.substance().equals(substance))
                .findFirst();
    }

    private static boolean isCarried(SmallBook book, String label) {
        return of(book, label, "P").filter(c -> c.kind() == Kind.CARRIED).isPresent();
    }

    @Test
    void theOneLiquidHasAllOfItWithItsAmountAndWhere() {
        SmallBook book = layer(then(started(), "2", "dry", "O1", "O2"), "O2", "organic");
        Content carried = of(book, "O2", "P").orElseThrow();
        assertEquals(Kind.CARRIED, carried.kind());
        assertEquals(2, carried.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(10, carried.amountMillimoles().orElseThrow().value(), 1e-9);
        assertEquals(10, carried.percentOf().orElseThrow(), 1e-9);
        assertTrue(carried.evidence().endsWith(" in O1, carried on"), carried.evidence());
        assertEquals(Content.Rests.PARENT, carried.rests());
    }

    @Test
    void throughTwoStepsInWhateverOrderTheLayersStand() {
        SmallBook book = then(then(started(), "2", "dry", "O1", "O2"), "3", "filter", "O2", "O3");
        layer(layer(book, "O3", "organic"), "O2", "organic").but("layers", "Status", "consumed");
        assertTrue(isCarried(book, "O3"));
    }

    @ParameterizedTest
    @CsvSource({"organic, true", "mother liquor, true", "rag, true", "solid, false", "distillate, false", "'', false"})
    void onlyALiquidTakesItOn(String phase, boolean carried) {
        SmallBook book = layer(then(started(), "2", "concentrate", "O1", "X2+Z9"), "X2", phase);
        layer(book, "Z9", "solid");
        assertEquals(carried, isCarried(book, "X2"));
    }

    @Test
    void besideASecondLiquidNothingTellsWhichHasIt() {
        SmallBook book = then(started(), "2", "combine", "O1", "X2+X3");
        assertEquals(false, isCarried(layer(layer(book, "X2", "organic"), "X3", "aqueous"), "X2"));
        SmallBook distilled = then(started(), "2", "concentrate", "O1", "X2+D3");
        assertTrue(isCarried(layer(layer(distilled, "X2", "organic"), "D3", "distillate"), "X2"));
    }

    @Test
    void aSampleTakesNothingOn() {
        SmallBook book = then(then(started(), "2", "sample", "O1", "Q1"), "3", "dry", "O1", "O2");
        layer(layer(book, "Q1", "organic"), "O2", "organic");
        assertTrue(isCarried(book, "O2"));
        assertEquals(false, isCarried(book, "Q1"));
    }

    @Test
    void whatWasLookedForInAnyPortionMadeOfItIsNotCarried() {
        SmallBook book = then(started(), "2", "filter", "O1", "O2+K2");
        layer(layer(book, "O2", "organic"), "K2", "solid").but("layers", "Net", "3.00");
        assertTrue(isCarried(book, "O2"));
        SmallBook assayed = book.row("assays", "Sample", "K2", "Substance", "p", "Method", "HPLC", "Result", "5")
                .but("assays", "Unit", "% w/w");
        assertEquals(false, isCarried(assayed, "O2"));
        // of another substance it was not
        assertTrue(isCarried(assayed.but("assays", "Substance", "S"), "O2"));
    }

    @Test
    void aLotOfItWasLookedAt() {
        SmallBook book = then(started(), "2", "filter", "O1", "O2+C1");
        layer(book, "O2", "mother liquor");
        assertEquals(false, isCarried(book.row("isolated", "Lot", "C1", "Product", "p", "Net", "1.00"), "O2"));
        SmallBook other = layer(then(started(), "2", "filter", "O1", "O2+C1"), "O2", "mother liquor")
                .row("products", "Product", "Q", "Wanted", "yes", "Molar mass", "150")
                .row("isolated", "Lot", "C1", "Product", "Q", "Net", "1.00");
        assertTrue(isCarried(other, "O2"));
        SmallBook found = other.row("assays", "Sample", "C1", "Substance", "P", "Method", "HPLC", "Result", "5")
                .but("assays", "Unit", "% w/w");
        assertEquals(false, isCarried(found, "O2"));
        assertTrue(isCarried(found.but("assays", "Substance", "S"), "O2"));
        assertTrue(isCarried(found.but("assays", "Substance", "P").but("assays", "Sample", "C9"), "O2"));
    }

    private static SmallBook pooled() {
        SmallBook book = then(started(), "2", "combine", "O1+A1", "X2");
        return layer(book, "X2", "organic");
    }

    @Test
    void aWantedProductOfOneOfTwoPortionsIsNotKnown() {
        Content unknown = of(pooled(), "X2", "P").orElseThrow();
        assertEquals(Kind.UNKNOWN, unknown.kind());
        assertEquals("assayed in O1, not in A1", unknown.evidence());
        // a solid beside it holds no liquid that was not looked at
        SmallBook solid = layer(pooled(), "A1", "solid")
                .but("layers", "Status", "consumed")
                .first("workup", "Gives aqueous", "")
                .first("workup", "Gives other", "A1");
        assertTrue(isCarried(solid, "X2"));
        // nobody asks for a by-product
        assertTrue(isCarried(pooled().first("products", "Wanted", "no"), "X2"));
    }

    @Test
    void contentsOfBothAddUpAndSayWhereFrom() {
        SmallBook book = layer(pooled(), "A1", "aqueous")
                .but("layers", "Status", "consumed")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "10", "Unit", "mg/mL");
        Content sum = of(book, "X2", "P").orElseThrow();
        assertEquals(2.5, sum.massGrams().orElseThrow().value(), 1e-9);
        assertEquals(12.5, sum.amountMillimoles().orElseThrow().value(), 1e-9);
        assertEquals(12.5, sum.percentOf().orElseThrow(), 1e-9);
        assertTrue(
                sum.evidence().contains(" in O1; ") && sum.evidence().contains(" in A1, carried on"), sum.evidence());
    }

    @Test
    void readingsThatDoNotAgreeStayDisputed() {
        SmallBook book = layer(then(started(), "2", "dry", "O1", "O2"), "O2", "organic")
                .row("assays", "Sample", "O1", "Substance", "P", "Method", "GC", "Result", "40", "Unit", "mg/mL");
        assertEquals(
                Content.Rests.DISPUTED_READINGS,
                of(book, "O2", "P").orElseThrow().rests());
    }

    @Test
    void aKeptPortionPassesNothingOn() {
        SmallBook book = then(started(), "2", "strip", "O1", "D2");
        layer(book, "D2", "distillate");
        RunTally tally = book.tally();
        assertEquals(
                Kind.MEASURED, tally.layer("O1").orElseThrow().contents().get(0).kind());
        assertTrue(tally.layer("O1").orElseThrow().terminal());
    }

    private static LayerTally standing(String status, boolean terminal, boolean endsWorkup) {
        Layer row = SmallBook.reaction()
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "50.00", "Status", status)
                .run()
                .layers()
                .get(0);
        return new LayerTally(
                "A1",
                Optional.of(row),
                Optional.of(Layer.Phase.AQUEOUS),
                terminal,
                false,
                endsWorkup,
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "consumed, true, true, true",
        "kept, false, true, true",
        "to reuse, false, true, true",
        "consumed, false, true, false",
        "used up, false, true, false",
        "kept, true, false, false"
    })
    void aBalanceCountsWhatIsThereOrSaidToBe(String status, boolean terminal, boolean endsWorkup, boolean counts) {
        assertEquals(counts, standing(status, terminal, endsWorkup).counts());
    }

    @Test
    void whatWasSpilledIsLost() {
        assertTrue(standing("lost", true, true).isLost());
        assertEquals(false, standing("kept", true, true).isLost());
    }
}
