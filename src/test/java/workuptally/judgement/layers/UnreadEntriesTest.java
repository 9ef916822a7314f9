package workuptally.judgement.layers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.judgement.RunReview;

/** What could not be read about a layer keeps it, and no other one. */
class UnreadEntriesTest {
    @ParameterizedTest
    @CsvSource({"layers, Volume", "layers, Status", "assays, Result", "workup, pH after", "workup, Operation"})
    void unreadEntryAboutALayerKeepsIt(String table, String heading) {
        RunReview review = book().but(table, heading, "what?").reviewOfRun();
        List<String> unread = UnreadEntries.of(review.tally().run(), "A1", review.findings());
        assertEquals(1, unread.size());
        assertTrue(unread.get(0).matches("(number-unreadable|choice-unknown) at .*"), unread.get(0));
    }

    @Test
    void unreadEntryAboutAnotherLayerDoesNot() {
        SmallBook book = book().row("layers", "Layer", "A9", "Phase", "aqueous", "Volume", "what?");
        assertEquals(1, book.book().findings().size());
        RunReview review = book.reviewOfRun();
        assertEquals(List.of(), UnreadEntries.of(review.tally().run(), "A1", review.findings()));
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
