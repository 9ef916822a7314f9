package workuptally.judgement.period;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import workuptally.judgement.period.BookShare.ContainerShare;
import workuptally.judgement.period.BookShare.Fill;
import workuptally.judgement.period.BookShare.Open;
import workuptally.judgement.period.PeriodReview.NotCounted;
import workuptally.judgement.totals.RunShare;
import workuptally.model.InputFile;
import workuptally.model.Run.Status;
import workuptally.tally.waste.SolventUse;

class PeriodLedgerTest {
    private final PeriodLedger ledger = new PeriodLedger(new Span(LocalDate.of(2026, 3, 2), LocalDate.of(2026, 3, 8)));

    private static RunShare run(String id, String date, Status status, double ethanolGrams) {
        return new RunShare(
                id,
                date.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(date)),
                status,
                List.of(),
                0,
                0,
                List.of(),
                List.of(new SolventUse(
                        "ethanol",
                        Optional.empty(),
                        ethanolGrams,
                        0,
                        new SolventUse.Purification(0, 0, 0, 0),
                        0,
                        0,
                        0,
                        0,
                        0,
                        ethanolGrams,
                        0.789,
                        0)),
                List.of(),
                Optional.empty());
    }

    private static BookShare book(String name, List<RunShare> runs, List<ContainerShare> containers) {
        return new BookShare(
                name,
                List.of(),
                List.of(new InputFile(name, name.repeat(3))),
                2,
                runs,
                containers,
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private void add(String name, RunShare... runs) {
        ledger.add(book(name, List.of(runs), List.of()));
    }

    private static ContainerShare container(String book, String asOf, String opened) {
        return new ContainerShare(
                "W-1",
                "halogenated",
                "",
                book,
                Optional.of(LocalDate.parse(asOf)),
                new Fill(OptionalDouble.empty(), 0, 0, OptionalDouble.empty(), 90),
                0,
                0,
                new Open(Optional.of(LocalDate.parse(opened)), Optional.empty(), Optional.empty(), false));
    }

    @Test
    void runWithoutADateIsNamedAndCountsNowhere() {
        add("a", run("R1", "", Status.ISOLATED, 10));
        PeriodReview review = ledger.review("test");
        assertEquals(List.of(new NotCounted("a", "R1", "has no date")), review.notCounted());
        assertEquals("run R1 has no date", review.books().get(0).remark());
        assertEquals(0, review.totals().solventInGrams(), 0.0);
    }

    @Test
    void recordThatIsFurtherOnCountsWhicheverBookComesFirst() {
        add("a", run("R1", "2026-03-03", Status.IN_WORKUP, 10), run("R2", "2026-03-03", Status.ISOLATED, 5));
        add("b", run("R1", "2026-03-04", Status.ISOLATED, 30), run("R2", "2026-03-03", Status.PLANNED, 7));
        PeriodReview review = ledger.review("test");
        assertEquals(35, review.totals().solventInGrams(), 1e-9);
        assertEquals(
                List.of(
                        new NotCounted("a", "R1", "counts in b, where its entries differ"),
                        new NotCounted("b", "R2", "counts in a, where its entries differ")),
                review.notCounted());
    }

    @Test
    void sameRecordInTwoBooksCountsOnce() {
        add("a", run("R1", "2026-03-03", Status.ISOLATED, 10));
        add("b", run("R1", "2026-03-03", Status.ISOLATED, 10));
        PeriodReview review = ledger.review("test");
        assertEquals(10, review.totals().solventInGrams(), 1e-9);
        assertEquals(List.of(new NotCounted("b", "R1", "counts in a")), review.notCounted());
        assertEquals(1, review.booksCounted());
    }

    @Test
    void meanOfTheLastFourLeavesPeriodsWithoutRunsOut() {
        add("a", run("R1", "2026-02-24", Status.ISOLATED, 10), run("R2", "2026-02-10", Status.ISOLATED, 30));
        add("b", run("R3", "2026-01-28", Status.ISOLATED, 500));
        PeriodReview review = ledger.review("test");
        assertEquals(2, review.before().lastFour().orElseThrow().periods());
        assertEquals(20, review.before().lastFour().orElseThrow().meanSolventInGrams(), 1e-9);
        assertEquals(
                List.of(0, 1, 0, 1),
                review.before().earlier().stream().map(e -> e.runs()).toList());
        assertTrue(review.before().lastFour().orElseThrow().pmi().isEmpty());
    }

    @Test
    void containerIsShownAsTheLastBookOfThePeriodLeavesIt() {
        ledger.add(book("a", List.of(), List.of(container("a", "2026-02-27", "2026-02-01"))));
        ledger.add(book("b", List.of(), List.of(container("b", "2026-03-06", "2026-02-01"))));
        ledger.add(book("c", List.of(), List.of(container("c", "2026-03-13", "2026-02-01"))));
        assertEquals("b", ledger.review("test").containers().get(0).book());
    }

    @Test
    void containerOpenedAfterThePeriodIsNoPartOfIt() {
        ledger.add(book("c", List.of(), List.of(container("c", "2026-03-13", "2026-03-09"))));
        assertTrue(ledger.review("test").containers().isEmpty());
    }

    @Test
    void containerIsOverdueOnlyAfterTheLastDayOfItsLimit() {
        ContainerShare onTheDay = new ContainerShare(
                "W-1",
                "halogenated",
                "",
                "a",
                Optional.of(LocalDate.of(2026, 3, 6)),
                new Fill(OptionalDouble.empty(), 0, 0, OptionalDouble.of(90), 90),
                0,
                0,
                new Open(Optional.empty(), Optional.of(30L), Optional.of(LocalDate.of(2026, 3, 6)), true));
        assertFalse(onTheDay.overdue());
        assertFalse(onTheDay.fill().isAboveLimit());
    }
}
