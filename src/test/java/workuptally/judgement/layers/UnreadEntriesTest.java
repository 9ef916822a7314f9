package workuptally.judgement.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Book;

/** What could not be read about a layer keeps it, and no other one. */
class UnreadEntriesTest {
    @ParameterizedTest
    @CsvSource({"layers, Volume", "layers, Status", "assays, Result", "workup, pH after", "workup, Operation"})
    void unreadEntryAboutALayerKeepsIt(String table, String heading) {
        Book book = book().but(table, heading, "what?").book();
        List<String> unread = UnreadEntries.of(book.runs().get(0), "A1", book.findings());
        assertEquals(1, unread.size());
        assertTrue(unread.get(0).matches("(number-unreadable|choice-unknown) at .*"), unread.get(0));
    }

    @Test
    void unreadEntryAboutAnotherLayerDoesNot() {
        Book book = book().row("layers", "Layer", "A9", "Phase", "aqueous", "Volume", "what?")
                .book();
        assertEquals(1, book.findings().size());
        assertEquals(List.of(), UnreadEntries.of(book.runs().get(0), "A1", book.findings()));
    }

    private static SmallBook book() {
        return SmallBook.reaction()
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
                        "Gives aqueous",
                        "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "<0.1", "Unit", "mg/mL");
    }
}
