package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.tally.RunBalances;
import workuptally.tally.RunTally;

/** 19 g of P read in O1, 100 mL, of which 18.00 g were isolated and 0.2 g stayed in a wash. */
class ThroughChecksTest {
    private static SmallBook washed() {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "MTBE", "Volume", "90")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "40")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .row("layers", "Layer", "O1", "Phase", "organic", "Volume", "100", "Status", "consumed")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "40", "Status", "kept")
                .row("assays", "Sample", "O1", "Substance", "P", "Method", "HPLC", "Result", "190", "Unit", "mg/mL")
                .row("assays", "Sample", "A2", "Substance", "p", "Method", "HPLC", "Result", "5", "Unit", "mg/mL")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O2", "Net", "18.00")
                .but("isolated", "Assay", "100");
    }

    private static List<Check> of(SmallBook book) {
        return new ThroughChecks(RunBalances.of(book.tally()), SmallBook.substances()).list();
    }

    @Test
    void whatWentThroughALayerIsFoundBehindIt() {
        RunTally tally = washed().tally();
        List<Check> all = new ThroughChecks(RunBalances.of(tally), SmallBook.substances()).list();
        assertEquals(1, all.size());
        Check check = all.get(0);
        assertEquals("P through layer O1", check.name());
        assertEquals(19 - 18.2, check.residual(), 1e-9);
        // two methods differ by 4 %, and half may be lost: as much again as was found
        assertEquals(-0.04 * 18.2, check.low(), 1e-9);
        assertEquals(18.2, check.high(), 1e-9);
        assertEquals(18.2, check.scale(), 1e-9);
        double u = tally.layer("O1")
                .orElseThrow()
                .contents()
                .get(0)
                .massGrams()
                .orElseThrow()
                .standardUncertainty();
        assertEquals(Math.sqrt(u * u + 0.728 * 0.728), check.standardUncertainty(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        // product may form in a quench of the layer or of what came of it
        "workup, Operation, quench",
        // nobody knows how much should be there
        "isolated, Assay, ''",
        "isolated, Net, ''",
        "isolated, From, RM",
        "isolated, Product, Q"
    })
    void whereNothingTellsWhatShouldBeFoundNothingIsHeldAgainstIt(String table, String heading, String cell) {
        assertEquals(List.of(), of(washed().but(table, heading, cell)));
    }

    @Test
    void aQuenchOfWhatCameOfTheLayerTellsNothingEither() {
        SmallBook book = washed().row("workup", "Step", "3", "Operation", "quench", "From", "O2", "Material", "water")
                .but("workup", "Gives organic", "O3")
                .but("workup", "Gives aqueous", "A3")
                .but("isolated", "From", "O3");
        assertEquals(List.of(), of(book));
        assertEquals(1, of(book.but("workup", "Operation", "wash")).size());
    }

    @Test
    void onlyAReadingOfAWantedProductInWhatWasWorkedUpCounts() {
        assertEquals(List.of(), of(washed().first("products", "Wanted", "no")));
        assertEquals(List.of(), of(washed().first("assays", "Result", "<190")));
        assertEquals(List.of(), of(washed().first("assays", "Sample", "A1").first("layers", "Layer", "A1")));
    }

    @Test
    void whatWasPurifiedFromALotIsNotCountedAgain() {
        SmallBook purified = washed().row(
                        "isolated", "Lot", "P1", "Product", "P", "Stage", "purified", "From", "C1", "Net", "15.00")
                .but("isolated", "Assay", "99");
        assertEquals(0.8, of(purified).get(0).residual(), 1e-9);
        SmallBook byStep = washed().row(
                        "workup", "Step", "3", "Operation", "crystallise", "From", "C1", "Gives other", "P1+ML1")
                .row("isolated", "Lot", "P1", "Product", "P", "Stage", "purified", "Net", "15.00")
                .but("isolated", "Assay", "99");
        assertEquals(0.8, of(byStep).get(0).residual(), 1e-9);
        // a second lot straight from the layer counts: 19 - 18.2 - 0.5
        SmallBook two = washed().row(
                        "isolated", "Lot", "C2", "Product", "P", "Stage", "crude", "From", "O2", "Gross", "60.50")
                .but("isolated", "Tare", "60.00")
                .but("isolated", "Assay", "100");
        assertEquals(0.3, of(two).get(0).residual(), 1e-9);
    }

    @Test
    void whatIsLeftInALayerOfAnotherOriginIsNotOfThisOne() {
        SmallBook book = washed().row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "5", "Unit", "mg/mL");
        assertEquals(0.8, of(book).get(0).residual(), 1e-9);
        SmallBook other = washed().row(
                        "assays", "Sample", "A2", "Substance", "S", "Method", "HPLC", "Result", "5", "Unit", "mg/mL");
        assertEquals(0.8, of(other).get(0).residual(), 1e-9);
    }
}
