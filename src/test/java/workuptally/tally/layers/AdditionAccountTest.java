package workuptally.tally.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.measure.Readings;
import workuptally.model.Book;
import workuptally.model.Run;
import workuptally.tally.amounts.Addition;

class AdditionAccountTest {
    @Test
    void portionsOfAStepCountTogether() {
        // 2 × 30 mL = 60 mL, u = 0.6 mL × √2; at 1.05 g/mL 63 g.
        Addition addition = addition("Portions", "2", "Volume", "30", "Density", "1.05");
        assertEquals(60, addition.volumeMillilitres().orElseThrow().value(), 1e-9);
        assertEquals(0.848528, addition.volumeMillilitres().orElseThrow().standardUncertainty(), 1e-6);
        assertEquals(63, addition.massGrams().orElseThrow().value(), 1e-9);
    }

    @Test
    void densityOfAListedMaterialStandsInForABlankOne() {
        // Water 0.9982 g/mL at 20 °C (CRC Handbook of Chemistry and Physics): 50 mL = 49.91 g.
        assertEquals(49.91, addition("Volume", "50").massGrams().orElseThrow().value(), 0.005);
    }

    @Test
    void unreadableDensityIsNotReplaced() {
        assertTrue(addition("Volume", "50", "Density", "smudged").massGrams().isEmpty());
    }

    @Test
    void weighedMaterialNeedsNoDensity() {
        Addition addition = addition("Material", "magnesium sulfate", "Mass", "6.0");
        assertEquals(6.0, addition.massGrams().orElseThrow().value(), 1e-12);
        assertTrue(addition.volumeMillilitres().isEmpty());
    }

    @Test
    void liquidThatWasWeighedInFillsTheFunnelToo() {
        // 45.0 g at 0.900 g/mL = 50 mL.
        Addition addition = addition("Material", "ethyl acetate", "Mass", "45.0", "Density", "0.900");
        assertEquals(50, addition.volumeMillilitres().orElseThrow().value(), 1e-9);
    }

    @Test
    void materialWithoutMassVolumeOrDensityHasNoMass() {
        assertTrue(
                addition("Material", "secret brew", "Volume", "20").massGrams().isEmpty());
    }

    /** What a product is thrown out with stands in the liquor, and where that is in the balance, so is it. */
    @Test
    void precipitantOfTheWorkupCountsWhereTheLiquorOfTheFiltrationCounts() {
        SmallBook book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "crystallise", "From", "RM", "Material", "ethanol")
                .but("workup", "Volume", "60")
                .but("workup", "Gives other", "Q1")
                .row("workup", "Step", "2", "Operation", "filter", "From", "Q1", "Gives other", "C1+ML1")
                .row("isolated", "Lot", "C1", "Product", "P", "From", "Q1")
                .row("layers", "Layer", "ML1", "Phase", "mother liquor", "Net", "101");
        assertFalse(list(book).purification());
    }

    @Test
    void crystallisationBelongsToPurification() {
        assertTrue(addition("Operation", "crystallise", "Volume", "50").purification());
        assertFalse(addition("Volume", "50").purification());
    }

    @Test
    void whatIsDoneToALotBelongsToPurification() {
        SmallBook book = book("Operation", "wash", "From", "C1", "Volume", "50")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "18.00");
        assertTrue(list(book).purification());
    }

    private static Addition addition(String... headingsAndCells) {
        return list(book(headingsAndCells));
    }

    private static SmallBook book(String... headingsAndCells) {
        SmallBook book = SmallBook.reaction()
                .row(
                        "workup",
                        "Step",
                        "1",
                        "Operation",
                        "wash",
                        "From",
                        "RM",
                        "Material",
                        "water",
                        "Gives organic",
                        "O1");
        for (int i = 0; i < headingsAndCells.length; i += 2) {
            book.but("workup", headingsAndCells[i], headingsAndCells[i + 1]);
        }
        return book;
    }

    private static Addition list(SmallBook small) {
        Book book = small.book();
        Run run = book.runs().get(0);
        return new AdditionAccount(run, new Readings(), book.limits(), LayerGraph.of(run), SmallBook.substances())
                .list()
                .get(0);
    }
}
