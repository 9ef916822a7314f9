package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;

class BalanceEntriesTest {
    private static SmallBook full() {
        return SmallBook.reaction()
                .but("charges", "Assay", "98")
                .but("charges", "Molarity", "2.5")
                .but("charges", "Titre", "2.4")
                .but("charges", "Density", "0.95")
                .row("workup", "Step", "1", "Operation", "extract", "From", "RM", "Material", "MTBE", "Portions", "2")
                .but("workup", "Volume", "60")
                .but("workup", "Mass", "44.4")
                .but("workup", "Density", "0.74")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Vessel", "E-1", "Volume", "170", "Gross", "277.0")
                .but("layers", "Tare", "106.0")
                .but("layers", "Net", "171.0")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "0.2", "Unit", "mg/mL")
                .row("isolated", "Lot", "C1", "Product", "P", "Vessel", "F-1", "Gross", "93.93", "Tare", "90.12")
                .but("isolated", "Net", "3.81")
                .but("isolated", "Assay", "97.5")
                .but("isolated", "Second weighing", "93.92");
    }

    private static List<Entry> entries(SmallBook book) {
        return BalanceEntries.of(book.run());
    }

    @Test
    void everyNumberThatABalanceRestsOnIsThereInOrderOfTheTables() {
        assertEquals(
                List.of(
                        "molar mass of P MOLAR_MASS 200",
                        "amount of S AMOUNT 10.00",
                        "molar mass of S MOLAR_MASS 100",
                        "assay of S PERCENT 98",
                        "molarity of S STRENGTH 2.5",
                        "titre of S STRENGTH 2.4",
                        "density of S DENSITY 0.95",
                        "volume of MTBE in step 1 VOLUME 60",
                        "mass of MTBE in step 1 NET 44.4",
                        "density of MTBE in step 1 DENSITY 0.74",
                        "volume of layer A1 VOLUME 170",
                        "gross of layer A1 GROSS 277.0",
                        "tare of layer A1 TARE 106.0",
                        "net mass of layer A1 NET 171.0",
                        "assay of P in A1 RESULT 0.2",
                        "gross of lot C1 GROSS 93.93",
                        "tare of lot C1 TARE 90.12",
                        "net mass of lot C1 NET 3.81",
                        "assay of lot C1 PERCENT 97.5",
                        "second weighing of lot C1 NET 93.92"),
                entries(full()).stream()
                        .map(e -> e.what() + " " + e.sort() + " " + e.number().asTyped())
                        .toList());
    }

    @Test
    void aWeighingKnowsItsVessel() {
        assertEquals(
                List.of("E-1", "E-1", "E-1", "E-1", "F-1", "F-1", "F-1"),
                entries(full()).stream()
                        .map(Entry::vessel)
                        .filter(v -> !v.isEmpty())
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({"mL, LIQUID", "mg, AMOUNT", "mmol, AMOUNT"})
    void anAmountIsALiquidByItsUnit(String unit, Entry.Sort sort) {
        SmallBook book = SmallBook.reaction().but("charges", "Actual unit", unit);
        assertEquals(List.of(sort), sortsOf(book, "amount of S"));
    }

    private static List<Entry.Sort> sortsOf(SmallBook book, String what) {
        return entries(book).stream()
                .filter(e -> e.what().equals(what))
                .map(Entry::sort)
                .toList();
    }

    @Test
    void equivalentsAreNoAmount() {
        assertEquals(List.of(), sortsOf(SmallBook.reaction().but("charges", "Actual unit", "eq"), "amount of S"));
    }

    @Test
    void anAssayByMassIsAPercentage() {
        assertEquals(List.of(Entry.Sort.PERCENT), sortsOf(full().but("assays", "Unit", "% w/w"), "assay of P in A1"));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "<0.2, 0", "nd, 0", "~0.2, 1", ">0.2, 0"})
    void aLimitAndAZeroAreNoNumberToSlip(String result, int there) {
        assertEquals(
                there,
                sortsOf(full().but("assays", "Result", result), "assay of P in A1")
                        .size());
    }

    @Test
    void aTransferHasAnAmount() {
        var book = SmallBook.reaction()
                .row("transfers", "Transfer", "T7", "Material", "acetone", "Container", "W-1", "Amount", "90")
                .but("transfers", "Status", "done")
                .book();
        Entry entry = BalanceEntries.of(book.transfers().get(0)).get(0);
        assertEquals("amount of transfer T7", entry.what());
        assertEquals(Entry.Sort.NET, entry.sort());
        assertEquals("transfers.csv line 2, Amount", entry.cell().place().inWords());
    }

    @ParameterizedTest
    @CsvSource({
        "charges, Actual amount",
        "charges, Molar mass",
        "charges, Assay",
        "charges, Density",
        "charges, Molarity",
        "workup, Volume",
        "workup, Mass",
        "workup, Density",
        "workup, Portions",
        "layers, Volume",
        "layers, Gross",
        "layers, Tare",
        "layers, Net",
        "assays, Result",
        "isolated, Gross",
        "isolated, Tare",
        "isolated, Net",
        "isolated, Assay"
    })
    void aCellThatNobodyCouldReadLeavesAHole(String table, String heading) {
        assertTrue(BalanceEntries.lacksReading(
                full().but(table, heading, "smudged").run()));
    }

    @Test
    void aBlankCellLeavesNone() {
        assertFalse(BalanceEntries.lacksReading(full().run()));
        assertFalse(BalanceEntries.lacksReading(
                SmallBook.reaction().but("charges", "Actual amount", "").run()));
    }
}
