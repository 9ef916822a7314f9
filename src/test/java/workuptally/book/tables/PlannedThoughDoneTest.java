package workuptally.book.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.model.FindingCode;
import workuptally.model.Run;

/** The plan that became the record, and marks that say nothing. */
class PlannedThoughDoneTest {
    private static List<FindingCode> told(Book book) {
        return book.findings().stream()
                .map(f -> f.code())
                .filter(c -> c == FindingCode.RUN_STATUS_CONTRADICTED)
                .toList();
    }

    @Test
    void aRunThatIsMeasuredCountsAsDone() {
        Book lot = SmallBook.reaction()
                .first("runs", "Status", "planned")
                .row("isolated", "Lot", "C1", "Product", "P", "Net", "3.94")
                .book();
        assertEquals(Run.Status.ISOLATED, lot.runs().get(0).status());
        assertEquals(1, told(lot).size());
        Book layer = SmallBook.reaction()
                .first("runs", "Status", "geplant")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50")
                .book();
        assertEquals(Run.Status.IN_WORKUP, layer.runs().get(0).status());
        assertEquals(1, told(layer).size());
    }

    @Test
    void aPlanIsAPlan() {
        Book plan = SmallBook.reaction()
                .first("runs", "Status", "planned")
                .row("layers", "Layer", "A1", "Phase", "aqueous")
                .book();
        assertEquals(Run.Status.PLANNED, plan.runs().get(0).status());
        assertTrue(told(plan).isEmpty());
    }

    @Test
    void sodiumIsAMaterial() {
        Book book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "dry", "From", "RM", "Material", "Na")
                .book();
        assertEquals("Na", book.runs().get(0).steps().get(0).added().material());
    }

    @ParameterizedTest
    @ValueSource(strings = {"?", "-", "n/a", "unknown", ""})
    void aMarkThatSaysNothingIsNoMaterial(String typed) {
        Book book = SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", typed, "Volume", "50")
                .book();
        assertEquals("", book.runs().get(0).steps().get(0).added().material());
    }
}
