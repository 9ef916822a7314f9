package workuptally.report.view.lines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.report.view.wording.ReadableNumbers;

/** Waste of the last week of a book beside the weeks before it; a book of one week has nothing to compare with. */
class WasteBarsTest {
    private static final ReadableNumbers NUMBERS = new ReadableNumbers('.');

    private static SmallBook week(SmallBook book, String run, String day, String grams) {
        return book.row("runs", "Run", run, "Date", day, "Status", "isolated")
                .row("workup", "Run", run, "Step", "1", "Operation", "wash", "From", "RM", "Material", "water")
                .but("workup", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Run", run, "Layer", "A1", "Phase", "aqueous", "Net", grams, "Status", "kept");
    }

    private static SmallBook first() {
        return SmallBook.reaction()
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Net", "40.00", "Status", "kept");
    }

    @Test
    void bookOfOneWeekShowsItsTotal() {
        WasteBars bars = WasteBars.of(first().review(), NUMBERS, 6);
        assertTrue(bars.title().contains("in all"), bars.title());
        assertEquals(1, bars.bars().size());
        assertEquals(40, bars.bars().get(0).grams(), 1e-9);
        assertTrue(bars.bars().get(0).beforeGrams().isEmpty());
    }

    /** 40 g in the week of Monday 2 March 2026, 60 g in the next, 25 g in the last: mean of those before 50 g. */
    @Test
    void lastWeekStandsBesideTheMeanOfTheWeeksBefore() {
        SmallBook book = week(first(), "X2", "2026-03-11", "60.00");
        Review review = week(book, "X3", "2026-03-16", "25.00").review();
        WasteBars bars = WasteBars.of(review, NUMBERS, 6);
        assertTrue(bars.title().contains("week of 2026-03-16"), bars.title());
        assertTrue(bars.title().contains("2 weeks before"), bars.title());
        assertEquals(1, bars.bars().size());
        assertEquals(25, bars.bars().get(0).grams(), 1e-9);
        assertEquals(50, bars.bars().get(0).beforeGrams().orElseThrow(), 1e-9);
    }

    @Test
    void sundayBelongsToTheWeekOfTheMondayBefore() {
        WasteBars bars = WasteBars.of(week(first(), "X2", "2026-03-08", "60.00").review(), NUMBERS, 6);
        assertEquals(100, bars.bars().get(0).grams(), 1e-9);
        assertTrue(bars.bars().get(0).beforeGrams().isEmpty());
    }

    @Test
    void whatNobodyWeighedIsNotNothing() {
        assertEquals("not recorded", new WasteBars.Bar("A", 0, true, OptionalDouble.empty()).inWords(NUMBERS));
        assertEquals(
                "≥\u00A01.20\u00A0kg", new WasteBars.Bar("A", 1200, true, OptionalDouble.empty()).inWords(NUMBERS));
        assertEquals("0.000\u00A0kg", new WasteBars.Bar("A", 0, false, OptionalDouble.empty()).inWords(NUMBERS));
    }
}
