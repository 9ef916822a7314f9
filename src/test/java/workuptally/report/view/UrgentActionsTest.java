package workuptally.report.view;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import workuptally.book.BookReader;
import workuptally.examples.SmallBook;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.FindingCode;
import workuptally.model.Severity;
import workuptally.reference.Reference;

/** What can hurt somebody stands before what spoils a figure, however much product hangs on that. */
class UrgentActionsTest {
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

    /** The invented week plans an azide with dichloromethane: before the start too, the line says what must not meet. */
    @Test
    void plannedMeetingNamesItsSubstances() throws Exception {
        Review week = new ReviewBuilder(Reference.load(), "0.1.0")
                .review(new BookReader().read(Path.of("input-templates", "demo-week")));
        assertTrue(UrgentAction.of(week, new ReadableNumbers('.'), 9).stream()
                .anyMatch(action ->
                        action.where().equals("R26-053") && action.text().contains("sodium azide + dichloromethane")));
    }
}
