package workuptally.report.view.firstpage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.report.pdf.InventedReviews;
import workuptally.report.view.lines.ContainerLine;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;

/** What can hurt somebody stands before what spoils a figure, however much product hangs on that. */
class UrgentActionRankingTest {
    @Test
    void whatMustNotMeetStandsBeforeASpoiledYield() {
        Review review = SmallBook.reaction()
                .row("charges", "Material", "sodium azide", "Role", "reagent")
                .but("charges", "Actual amount", "20")
                .but("charges", "Actual unit", "mmol")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "1 M HCl")
                .but("workup", "Volume (mL)", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Gross", "60.00", "Assay", "100")
                .review();
        Set<FindingCode> urgent = review.findings().stream()
                .filter(f -> f.severity() == Severity.STOP || f.severity() == Severity.HOLD)
                .map(f -> f.code())
                .collect(Collectors.toSet());
        assertTrue(urgent.contains(FindingCode.MATERIALS_MUST_NOT_MEET), urgent.toString());
        assertTrue(urgent.contains(FindingCode.TARE_MISSING), urgent.toString());
        String first =
                UrgentAction.of(review, new ReadableNumbers('.'), 9).get(0).text();
        assertTrue(first.contains("sodium azide"), first);
    }

    /** Of a layer that nobody measured nobody knows what there is to recover. */
    @Test
    void layerThatWasNotAssayedIsAssayedFirst() {
        SmallBook book = SmallBook.reaction()
                .but("products", "Character", "neutral")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O1", "Net", "18.00")
                .but("isolated", "Assay", "100")
                .but("isolated", "Identity by", "NMR")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept");
        assertTrue(lines(book).stream().noneMatch(line -> line.contains("recover it")), lines(book)::toString);
        SmallBook assayed = book.row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "1.50")
                .but("assays", "Unit", "g");
        assertTrue(lines(assayed).stream().anyMatch(line -> line.contains("recover it")), lines(assayed)::toString);
    }

    /** A1 holds 1.50 g, 7.5 % of theory; A2 waits because nothing is known of A9, which a step gave. Both are named. */
    @Test
    void layerThatWaitsIsNamedBesideOneThatHoldsProduct() {
        SmallBook book = SmallBook.reaction()
                .but("products", "Character", "neutral")
                .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O1")
                .but("workup", "Gives aqueous", "A1")
                .row("workup", "Step", "2", "Operation", "wash", "From", "O1", "Material", "water", "Volume", "50")
                .but("workup", "Gives organic", "O2")
                .but("workup", "Gives aqueous", "A2")
                .but("workup", "Gives other", "A9")
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "From", "O2", "Net", "18.40")
                .but("isolated", "Assay", "100")
                .but("isolated", "Identity by", "NMR")
                .row("layers", "Layer", "A1", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept")
                .row("layers", "Layer", "A2", "Phase", "aqueous", "Volume", "50", "Net", "49.90", "Status", "kept")
                .row("assays", "Sample", "A1", "Substance", "P", "Method", "HPLC", "Result", "1.50", "Unit", "g")
                .row("assays", "Sample", "A2", "Substance", "P", "Method", "HPLC", "Result", "<0.02", "Unit", "g");
        List<String> lines = lines(book);
        assertTrue(lines.stream().anyMatch(l -> l.startsWith("Keep A1; recover it")), lines::toString);
        assertTrue(lines.stream().anyMatch(l -> l.startsWith("Keep until") && l.endsWith(": A2")), lines::toString);
    }

    private static List<String> lines(SmallBook book) {
        return UrgentAction.of(book.review(), new ReadableNumbers('.'), 9).stream()
                .map(UrgentAction::text)
                .toList();
    }

    /** Of 20.0 g theory 12.0 g is 60 %: 64 % as typed is an odd figure, 94 % is one that nobody should report. */
    @Test
    void yieldTypedFarFromTheWeighedOneStandsOnPageOne() {
        Review review = typed("94").review();
        List<UrgentAction> actions = UrgentAction.of(review, new ReadableNumbers('.'), 7);
        assertEquals(1, actions.size(), actions.toString());
        assertEquals(Severity.CHECK, actions.get(0).severity());
        assertEquals("X1", actions.get(0).where());
        assertEquals(
                "typed yield 94 % where lot C1 weighs 60.0 % of theory",
                actions.get(0).text());
        assertEquals(
                "1 check", TopFigure.of(review, new ReadableNumbers('.')).get(0).value());
    }

    @Test
    void mildCheckIsCountedAndCriesNoWolf() {
        Review review = typed("64").review();
        assertEquals(List.of(), UrgentAction.of(review, new ReadableNumbers('.'), 7));
        assertTrue(
                UrgentAction.nothingFirst(review).contains(" before reporting: X1"), UrgentAction.nothingFirst(review));
    }

    /** 12 mg typed in a column of grams would be 0.06 % of theory. */
    @Test
    void slipOfAUnitIsNamedWithTheTypedYield() {
        String text = lines(typed("60").but("isolated", "Net", "0.01200")).get(0);
        assertEquals("typed yield 60 % where lot C1 weighs 0.0600 % of theory; the weight × 1000 would fit", text);
    }

    /** 24.2 g of 20.0 g theory: purified or not, it is not all product, assay or none. */
    @Test
    void purifiedLotFarAboveTheoryStops() {
        SmallBook book = typed("").but("isolated", "Net", "24.20").but("isolated", "Stage", "purified");
        assertTrue(
                book.review().findings().stream()
                        .anyMatch(f -> f.code() == FindingCode.YIELD_ABOVE_100 && f.severity() == Severity.STOP),
                book.review().findings()::toString);
    }

    @Test
    void checksBeyondTheRoomShareTheLastLine() {
        SmallBook book = typed("94");
        for (int i = 2; i <= 6; i++) {
            book.row("runs", "Run", "X" + i, "Date", "2026-03-02", "Kind", "reaction", "Status", "isolated")
                    .row("products", "Run", "X" + i, "Product", "P", "Wanted", "yes", "Molar mass", "200")
                    .but("products", "Coefficient", "1")
                    .row("charges", "Run", "X" + i, "Material", "S", "Role", "substrate", "Molar mass", "100")
                    .but("charges", "Coefficient", "1")
                    .but("charges", "Actual amount", "10.00")
                    .but("charges", "Actual unit", "g")
                    .row("isolated", "Run", "X" + i, "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "12.00")
                    .but("isolated", "Stated yield", "94");
        }
        List<UrgentAction> actions = UrgentAction.of(book.review(), new ReadableNumbers('.'), 7);
        assertEquals(3, actions.size(), actions.toString());
        assertEquals("4 others", actions.get(2).where());
        assertTrue(
                actions.get(2).text().startsWith("Settle before reporting: X3"),
                actions.get(2).text());
    }

    private static SmallBook typed(String yield) {
        return SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "12.00")
                .but("isolated", "Stated yield", yield);
    }

    @Test
    void transferThatMustNotBeMadeSaysWhy() {
        Review week = InventedReviews.demoWeek();
        String waste = UrgentAction.of(week, new ReadableNumbers('.'), 9).stream()
                .map(UrgentAction::text)
                .filter(text -> text.contains("T6"))
                .findFirst()
                .orElseThrow();
        assertTrue(waste.contains("T6 (sulfur dioxide)") && waste.contains("T9 (too full)"), waste);
    }

    /** Nothing is left to keep back: the container and who is to be told stand there. */
    @Test
    void transferAlreadyMadeIntoAnotherStreamIsNamed() {
        Review review = SmallBook.reaction()
                .row("containers", "Container", "W-2", "Waste stream", "non-halogenated solvents", "Capacity", "10")
                .row("transfers", "Transfer", "T4", "Material", "dichloromethane", "Container", "W-2", "Amount", "80")
                .but("transfers", "Status", "done")
                .review();
        List<String> texts = UrgentAction.of(review, new ReadableNumbers('.'), 9).stream()
                .map(UrgentAction::text)
                .toList();
        assertTrue(
                texts.stream().anyMatch(t -> t.contains("another stream") && t.contains("T4 in W-2")), texts::toString);
        assertTrue(texts.stream().noneMatch(t -> t.contains("Keep back")), texts::toString);
        String line = ContainerLine.of(review, new ReadableNumbers('.')).get(0).fillWords();
        assertTrue(line.endsWith("holds another stream: T4"), line);
    }

    @Test
    void explosiveStandsBeforeAFunnelThatIsTooFull() {
        List<String> where = UrgentAction.of(InventedReviews.demoWeek(), new ReadableNumbers('.'), 9).stream()
                .map(UrgentAction::where)
                .toList();
        assertEquals("R26-053", where.get(0), where.toString());
        assertTrue(where.indexOf("R26-049") > 0, where.toString());
    }

    /** The invented week plans an azide with dichloromethane: before the start too, the line says what must not meet. */
    @Test
    void plannedMeetingNamesItsSubstances() {
        Review week = InventedReviews.demoWeek();
        assertTrue(UrgentAction.of(week, new ReadableNumbers('.'), 9).stream()
                .anyMatch(action -> action.where().equals("R26-053")
                        && action.text().contains("sodium azide + dichloromethane (explodes)")));
    }

    /** The layers of R26-045 are swapped: a stop stands on page one with its run whatever else there is. */
    @Test
    void everyStopOfTheInventedWeekStandsWithItsRun() {
        Review week = InventedReviews.demoWeek();
        List<UrgentAction> actions = UrgentAction.of(week, new ReadableNumbers('.'), 7);
        assertEquals(7, actions.size());
        for (RunReview run : week.runs()) {
            if (run.has(Severity.STOP)) {
                assertTrue(
                        actions.stream()
                                .anyMatch(a -> a.severity() == Severity.STOP
                                        && a.where().equals(run.id())),
                        run.id() + " in " + actions);
            }
        }
    }

    /** 8.0 g are missing; glass keeps 0.4 g at most, so that rinsing it is no measurement to make next. */
    @Test
    void placeThatCannotHoldWhatIsMissingIsNotMeasuredNext() {
        List<NextMeasurement> next = NextMeasurement.of(
                typed("")
                        .but("isolated", "Assay", "100")
                        .row("workup", "Step", "1", "Operation", "wash", "From", "RM", "Material", "water")
                        .but("workup", "Volume", "50")
                        .but("workup", "Gives organic", "O1")
                        .but("workup", "Gives aqueous", "A1")
                        .review(),
                Wording.POINT);
        assertTrue(
                next.stream().anyMatch(n -> n.settles().startsWith("8.0\u00A0g P is missing: perhaps ")),
                next::toString);
        assertTrue(next.stream().noneMatch(n -> n.test().contains("rinse the flasks")), next::toString);
    }
}
