package workuptally.report.view.firstpage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.report.view.lines.ProposalLine;
import workuptally.report.view.wording.ReadableNumbers;

/** What is to do about the book itself and its containers: alike once, and what can hurt somebody first. */
class BookActionsTest {
    private static List<UrgentAction> actions(Review review) {
        return UrgentAction.of(review, new ReadableNumbers('.'), UrgentAction.MOST_LINES);
    }

    @Test
    void rowsOfUnknownRunsAreOneActionForATable() {
        SmallBook book = SmallBook.reaction();
        for (int i = 0; i < 30; i++) {
            book.row("layers", "Layer", "A" + i, "Phase", "aqueous", "Volume", "50")
                    .but("layers", "Run", "Y" + i);
        }
        List<UrgentAction> actions = actions(book.review());
        assertEquals(
                1, actions.stream().filter(a -> a.where().equals("the book")).count(), actions::toString);
        assertTrue(actions.stream().anyMatch(a -> a.text().contains("29 more cells")), actions::toString);
    }

    /** Hydrogen chloride and an azide give hydrazoic acid; a wrong molar mass spoils a figure. */
    @Test
    void aContainerThatMustNotStandTogetherStandsBeforeASpoiledFigureAndIsNamed() {
        List<UrgentAction> actions = actions(SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Gross", "60.00", "Assay", "100")
                .row("containers", "Container", "W-1", "Waste stream", "aqueous, acidic", "Capacity (L)", "10")
                .but("containers", "Contents then", "hydrogen chloride 100 g; sodium azide 20 g; water 900 g")
                .review());
        assertEquals("W-1", actions.get(0).where(), actions::toString);
        assertTrue(actions.get(1).text().contains("tare"), actions::toString);
    }

    /** A hold about a container alone is no run, and not nothing. */
    @Test
    void aStopOfTheBookAloneIsCountedOnPageOne() {
        Review review = SmallBook.reaction()
                .row("isolated", "Lot", "C1", "Product", "P", "Stage", "crude", "Net", "19.00", "Assay", "98")
                .row("containers", "Container", "W-1", "Waste stream", "aqueous, acidic", "Capacity (L)", "10")
                .but("containers", "Contents then", "hydrogen chloride 100 g; sodium azide 20 g; water 900 g")
                .review();
        assertEquals(
                "1 stop", TopFigure.of(review, new ReadableNumbers('.')).get(0).value());
    }

    @Test
    void nothingFitsAContainerThatIsPastItsDate() {
        SmallBook book = SmallBook.reaction()
                .row("limits", "Name", "Container days", "Value", "90")
                .row("limits", "Name", "As of", "Value", "2026-03-06")
                .row("containers", "Container", "W-1", "Waste stream", "non-halogenated solvents", "Capacity (L)", "10")
                .but("containers", "Tare", "400")
                .but("containers", "Gross then", "1400")
                .but("containers", "Contents then", "acetone 1000 g")
                .but("containers", "Opened", "2025-11-01")
                .row("transfers", "Transfer", "T1", "Material", "acetone", "Container", "W-1", "Amount (g)", "100")
                .but("transfers", "Status", "proposed");
        ProposalLine line = ProposalLine.of(book.review()).get(0);
        assertEquals(ProposalLine.Group.ASK, line.group());
        assertEquals(List.of("the container is past its date"), line.reasons());
    }
}
