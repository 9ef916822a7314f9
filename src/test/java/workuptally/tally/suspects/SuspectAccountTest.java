package workuptally.tally.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.tally.RunTallying;
import workuptally.tally.amounts.Substances;

/** 100 mmol of S gave 19.00 g of P, 95 of 100 mmol, and a water layer with 0.4 g of P in it; 84 of 87 g of toluene were taken off. */
class SuspectAccountTest {
    private static final Substances SUBSTANCES = SmallBook.substances();

    private static SmallBook sound() {
        return SmallBook.reaction()
                .row("charges", "Material", "R", "Role", "reagent", "Actual amount", "11.00", "Actual unit", "g")
                .row("charges", "Material", "toluene", "Role", "solvent", "Actual amount", "100", "Actual unit", "mL")
                .but("charges", "Density", "0.867")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Mass", "50.00")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "concentrate", "From", "O1", "Gives other", "D1+C1")
                .row("layers", "Layer", "D1", "Phase", "distillate", "Net", "84.0", "Status", "to reuse")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50.0", "Net", "50.20", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "8.0", "Unit", "mg/mL")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "19.00")
                .but("isolated", "Assay", "100");
    }

    private static RunSuspects suspects(SmallBook small) {
        Book book = small.book();
        return new SuspectAccount(book, SUBSTANCES)
                .of(new RunTallying(book.limits(), SUBSTANCES).tally(book.runs().get(0)));
    }

    private static List<String> suggested(SmallBook book) {
        return suggested(suspects(book));
    }

    private static List<String> suggested(RunSuspects suspects) {
        return suspects.list().stream()
                .map(s -> s.place().inWords() + " " + s.suggested())
                .toList();
    }

    @Test
    void aSoundRunHasNothingOff() {
        RunSuspects none = suspects(sound());
        assertEquals(List.of(), none.off());
        assertEquals(List.of(), none.list());
    }

    @Test
    void aNumberThatSettlesAllBalancesIsNamed() {
        // 190 g of 20 g in theory
        SmallBook tenfold = sound().but("isolated", "Net", "190.00");
        RunSuspects suspects = suspects(tenfold);
        assertTrue(suspects.off().contains("closure on S"));
        assertEquals("isolated.csv line 2, Net 19.000", suggested(suspects).get(0));
    }

    @Test
    void whereACellCannotBeReadOnlyWhatIsMissingIsSaid() {
        SmallBook unread = sound().but("isolated", "Net", "190.00").but("layers", "Volume", "smudged");
        RunSuspects none = suspects(unread);
        assertEquals(List.of(), none.off());
        assertEquals(List.of(), none.list());
        SmallBook missing = unread.but("isolated", "Gross", "290.00");
        assertEquals(List.of("isolated.csv line 2, Tare "), suggested(missing));
    }

    @Test
    void aMissingStepIsNoMatterOfADigit() {
        SmallBook book = sound().but("isolated", "Net", "190.00")
                .row("workup", "Step", "3", "Operation", "dry", "From", "O9", "Gives other", "O3");
        RunSuspects off = suspects(book);
        assertFalse(off.off().isEmpty());
        assertEquals(List.of(), off.list());
        // taken up in time it is
        assertFalse(suspects(book.but("workup", "From", "A1")).list().isEmpty());
    }

    @Test
    void aStepInTheWrongPlaceIsNoMatterOfADigit() {
        SmallBook early = sound().but("isolated", "Net", "190.00")
                .row("workup", "Step", "3", "Operation", "dry", "From", "A5", "Gives other", "A4")
                .row("workup", "Step", "4", "Operation", "dry", "From", "A1", "Gives other", "A5");
        assertEquals(List.of(), suspects(early).list());
    }

    @Test
    void aRowThatNoStepGivesIsAtMostThereTwice() {
        SmallBook loose = sound().row("layers", "Layer", "X9", "Phase", "aqueous", "Volume", "50.0", "Net", "5.00")
                .but("layers", "Status", "kept");
        assertEquals(List.of(), suspects(loose.but("isolated", "Net", "190.00")).list());
        SmallBook twice = sound().row("layers", "Layer", "X9", "Phase", "aqueous", "Volume", "50.0", "Net", "50.20")
                .but("layers", "Status", "kept")
                .row("assays", "Sample", "X9", "Substance", "P", "Method", "HPLC", "Result", "8.0", "Unit", "mg/mL");
        List<Suspect> found = suspects(twice).list();
        assertEquals(
                List.of(UsualSlip.COUNTED_TWICE),
                found.stream().map(Suspect::slip).toList());
    }

    @Test
    void aMolarMassIsHeldAgainstTheFormulaOfItsRow() {
        // caffeine 194.19, as a charge and as a product
        SmallBook charge = SmallBook.reaction()
                .row("charges", "Material", "caffeine", "Formula", "C8H10N4O2", "Molar mass", "914.19")
                .but("charges", "Actual amount", "1.00")
                .but("charges", "Actual unit", "g");
        assertEquals("charges.csv line 3, Molar mass 194.19", suggested(charge).get(0));
        SmallBook product = SmallBook.reaction()
                .row("products", "Product", "caffeine", "Formula", "C8H10N4O2", "Molar mass", "914.19");
        assertEquals(
                "products.csv line 3, Molar mass 194.19", suggested(product).get(0));
    }

    @Test
    void theAmountOfATransferIsAmongTheEntries() {
        SmallBook book = sound().row("containers", "Container", "W-1", "Waste stream", "aqueous")
                .row("transfers", "Transfer", "T1", "Layer", "D1", "Container", "W-1", "Amount", "8.40")
                .but("transfers", "Status", "done");
        assertEquals("transfers.csv line 2, Amount 84.0", suggested(book).get(0));
    }

    @Test
    void atMostThreeCellsAreNamed() {
        SmallBook many = SmallBook.reaction();
        for (int i = 1; i <= 5; i++) {
            many.row("isolated", "Lot", "C" + i, "Product", "P", "Gross", "9" + i + ".00", "Tare", "");
        }
        assertEquals(3, suspects(many).list().size());
    }
}
