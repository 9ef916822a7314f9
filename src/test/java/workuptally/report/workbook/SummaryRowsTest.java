package workuptally.report.workbook;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import workuptally.examples.DemoReview;
import workuptally.judgement.Review;
import workuptally.report.view.sheets.SummarySection;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Wording;

/** The sheet on which the workbook opens. */
class SummaryRowsTest {
    private static final double POINTS_OF_THREE_LINES = 45;

    /** Lines of a table program's usual height in a window of 1280 x 720: common practice. */
    private static final int LINES_OF_A_SCREEN = 25;

    private static ResultSheet summary() throws Exception {
        Review review = DemoReview.review();
        ResultSheet sheet = new ResultSheet(SummarySection.of(review, Wording.POINT), "Summary");
        sheet.survey().take(new LookedAt()).forEachOrdered(row -> {});
        return sheet;
    }

    @Test
    void rowsAreNoHigherThanThreeLines() throws Exception {
        ResultSheet sheet = summary();
        SheetLayout layout = new SheetLayout(sheet);
        for (TableView.Row row : sheet.view().rows()) {
            assertTrue(layout.heightPoints(row) <= POINTS_OF_THREE_LINES, row::toString);
        }
    }

    @Test
    void whatNeedsDoingStandsInTheFirstScreen() throws Exception {
        ResultSheet sheet = summary();
        assertTrue(sheet.firstRow() < LINES_OF_A_SCREEN, sheet.view().note());
        String second = sheet.view().note().lines().skip(1).findFirst().orElseThrow();
        assertTrue(second.startsWith("stop"), second);
        assertFalse(sheet.view().note().contains("…"), sheet.view().note());
    }
}
