package workuptally.tally.containers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import workuptally.examples.SmallBook;
import workuptally.model.Book;
import workuptally.tally.RunTallying;

/** A container W1 of 10 L that held 2000 g of water when it was weighed on 2026-03-02; hand arithmetic. */
class ContainerAccountTest {
    private static SmallBook book() {
        return SmallBook.reaction()
                .row("containers", "Container", "W1", "Waste stream", "aqueous, neutral", "Capacity", "10")
                .but("containers", "Tare", "500")
                .but("containers", "Gross then", "2500")
                .but("containers", "Contents then", "water 2000 g")
                .but("containers", "Weighed on", "2026-03-02")
                .but("containers", "Opened", "2026-02-02");
    }

    /** 200 mL of 1 M HCl, weighed as A1, 203.18 g. */
    private static SmallBook washed() {
        return book().row(
                        "workup",
                        "Step",
                        "1",
                        "Operation",
                        "wash",
                        "From",
                        "RM",
                        "Material",
                        "1 M HCl",
                        "Volume",
                        "200")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "200", "Net", "203.18", "Status", "kept");
    }

    private static SmallBook poured(SmallBook book, String... headingsAndCells) {
        book.row("transfers", "Transfer", "T1", "Container", "W1", "Status", "done");
        book.but("transfers", "Run", "");
        for (int i = 0; i < headingsAndCells.length; i += 2) {
            book.but("transfers", headingsAndCells[i], headingsAndCells[i + 1]);
        }
        return book;
    }

    private static ContainerTally ledger(SmallBook small) {
        Book book = small.book();
        RunTallying tallying = new RunTallying(book.limits(), SmallBook.substances());
        return new ContainerAccount(
                        book, book.runs().stream().map(tallying::tally).toList(), SmallBook.substances())
                .ledgers()
                .get(0);
    }

    @Test
    void contentsThenAreWhatItHolds() {
        ContainerTally tally = ledger(book());
        assertEquals(Map.of("water", 2000.0), tally.then().grams());
        // 0.9982 g/mL at 20 °C
        assertEquals(2000 / 0.9982, tally.then().millilitres(), 1e-6);
        assertEquals(tally.then(), tally.now());
    }

    /** 96 g of half-strength: 5 % NaOH is 4.80 g sodium hydroxide and 91.20 g water. */
    @Test
    void solutionOfAKnownStrengthIsTakenApart() {
        ContainerTally tally = ledger(poured(book(), "Material", "5 % NaOH", "Amount", "96"));
        assertEquals(4.8, tally.now().grams().get("sodium hydroxide"), 1e-9);
        assertEquals(2091.2, tally.now().grams().get("water"), 1e-9);
        assertEquals(List.of(), tally.done().get(0).unweighed());
        assertEquals("5 % NaOH", tally.done().get(0).source());
        assertEquals(96, tally.done().get(0).totalGrams(), 1e-9);
    }

    @Test
    void partOfALayerIsItsShareOfTheMakeUp() {
        ContainerTally whole = ledger(poured(washed(), "Run", "X1", "Layer", "A1"));
        ContainerAddition all = whole.done().get(0);
        assertEquals(203.18, all.sourceGrams(), 1e-9);
        assertEquals(203.18, all.totalGrams(), 0.5);
        assertEquals(200, all.millilitres(), 1);
        assertEquals("X1 A1", all.source());
        ContainerAddition half = ledger(poured(washed(), "Run", "X1", "Layer", "A1", "Amount", "101.59"))
                .done()
                .get(0);
        assertEquals(all.totalGrams() / 2, half.totalGrams(), 1e-9);
        assertEquals(all.millilitres() / 2, half.millilitres(), 1e-9);
        assertEquals(all.grams().keySet(), half.grams().keySet());
    }

    @Test
    void layerThatWasNotWeighedIsSaid() {
        SmallBook book = poured(washed().but("layers", "Net", ""), "Run", "X1", "Layer", "A1");
        assertEquals(List.of("A1"), ledger(book).done().get(0).unweighed());
    }

    @Test
    void layerNobodyKnowsIsOfUnstatedContents() {
        ContainerAddition unknown = ledger(poured(washed(), "Run", "X1", "Layer", "Z1", "Amount", "50"))
                .done()
                .get(0);
        assertEquals(50, unknown.totalGrams(), 1e-9);
        assertEquals(50, unknown.millilitres(), 1e-9);
        assertEquals(0, unknown.sourceGrams(), 0);
        assertTrue(ContainerState.isOurWord(unknown.grams().keySet().iterator().next()));
    }

    /** What was poured before the weighing is in what was weighed; on that day or without one it counts as later. */
    @ParameterizedTest
    @CsvSource({
        "done, 2026-03-01, 1, 0, 0, 2000",
        "done, 2026-03-02, 0, 1, 0, 2096",
        "done, '', 0, 1, 0, 2096",
        "proposed, 2026-03-01, 0, 0, 1, 2000"
    })
    void dayAndStatusTellWhatCounts(String status, String day, int before, int done, int proposed, double grams) {
        ContainerTally tally =
                ledger(poured(book(), "Material", "water", "Amount", "96", "Status", status, "Date", day));
        assertEquals(before, tally.before().size());
        assertEquals(done, tally.done().size());
        assertEquals(proposed, tally.proposed().size());
        assertEquals(grams, tally.now().totalGrams(), 1e-9);
    }

    /** 2 % of 2000 g is 40 g; of little, 20 g (bench rules, common practice). */
    @ParameterizedTest
    @CsvSource({"2500, 2000, 40", "900, 400, 20"})
    void ledgerAndBottleMayDifferByTwoPerCent(String gross, double weighed, double tolerance) {
        ContainerTally.Reconciliation found = ledger(book().but("containers", "Gross then", gross))
                .reconciliation()
                .orElseThrow();
        assertEquals(weighed, found.weighedGrams(), 1e-9);
        assertEquals(2000, found.ledgerGrams(), 1e-9);
        assertEquals(tolerance, found.toleranceGrams(), 1e-9);
        assertTrue(ledger(book().but("containers", "Tare", "")).reconciliation().isEmpty());
    }

    /** Opened on 2026-02-02; 33, 34 and 35 days on are Saturday, Sunday and Monday, and the Friday before is the 6th of March. */
    @ParameterizedTest
    @CsvSource({"33, 2026-03-07, 2026-03-06", "34, 2026-03-08, 2026-03-06", "35, 2026-03-09, 2026-03-09"})
    void ageRunsFromTheOpening(String days, LocalDate due, LocalDate working) {
        ContainerTally.Age age = ledger(book().limit("As of", "2026-03-04").limit("Container days", days))
                .age()
                .orElseThrow();
        assertEquals(30, age.daysOpen());
        assertEquals(Optional.of(due), age.dueOn());
        assertEquals(Optional.of(working), age.lastWorkingDay());
        assertFalse(age.overdue());
        assertTrue(ledger(book()).age().isEmpty());
    }
}
