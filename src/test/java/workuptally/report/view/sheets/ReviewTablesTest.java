package workuptally.report.view.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import workuptally.book.BookReader;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.report.ExampleReview;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.report.view.wording.Wording;
import workuptally.speed.ReplicatedWeek;

class ReviewTablesTest {
    private static final Review REVIEW = ExampleReview.of(
            2,
            ExampleReview.finding(Severity.CHECK, "R-002", "Layers", 3, 1),
            ExampleReview.finding(Severity.STOP, "R-002", "Layers", 4, 1),
            ExampleReview.finding(Severity.NOTE, "R-001", "Runs", 2, 0));

    private static Cell cell(TableView table, int row, String column) {
        List<String> names = table.columns().stream().map(Column::name).toList();
        return table.rows().get(row).cells().get(names.indexOf(column));
    }

    private static void assertShown(double value, int decimals, Cell cell) {
        Cell.Number number = (Cell.Number) cell;
        assertEquals(value, number.value(), 0.5 * Math.pow(10, -decimals));
        assertEquals(decimals, number.decimals());
    }

    @Test
    void headingsAreUniqueInEveryTable() {
        for (TableView table : ReviewTables.of(REVIEW, Wording.POINT)) {
            List<String> headings = table.columns().stream()
                    .map(c -> c.heading().toLowerCase(java.util.Locale.ROOT))
                    .toList();
            assertEquals(headings.size(), headings.stream().distinct().count(), table.title());
        }
    }

    @Test
    void summaryShowsYieldAndClosureWithTheirUncertainty() {
        TableView summary = SummarySection.of(REVIEW, Wording.POINT);
        assertShown(80.02, 2, cell(summary, 0, "Yield"));
        assertShown(0.86, 2, cell(summary, 0, "U of yield"));
        assertShown(90.0, 1, cell(summary, 0, "Closure"));
        assertShown(1.2, 1, cell(summary, 0, "U of closure"));
        assertEquals("open", cell(summary, 0, "Verdict").shown());
        assertTrue(summary.note().contains("mean 81.3 %"), summary.note());
        assertTrue(summary.note().contains("R-9: no assay"), summary.note());
    }

    @Test
    void noLineAboveTheSummaryOutgrowsThePage(@TempDir Path folder) throws Exception {
        new ReplicatedWeek(Path.of("input-templates", "demo-week"), 60).writeCsv(folder);
        Review review = new ReviewBuilder(Reference.load(), "test").review(new BookReader().read(folder));
        assertTrue(review.period().excluded().size() > 10);
        String note = SummarySection.of(review, Wording.POINT).note();
        assertTrue(note.contains("; and " + (review.period().excluded().size() - 6) + " more"), note);
        assertTrue(note.lines().allMatch(line -> line.length() < 300), note);
    }

    @Test
    void summaryNamesTheWorstFindingAndLeadsToIt() {
        TableView summary = SummarySection.of(REVIEW, Wording.POINT);
        assertEquals("stop", cell(summary, 1, "Worst").shown());
        assertEquals(Optional.of(Severity.STOP), summary.rows().get(1).severity());
        assertEquals(new Cell.Jump("2 findings", "Findings", 0), cell(summary, 1, "Findings"));
        assertEquals(new Cell.Jump("1 finding", "Findings", 2), cell(summary, 0, "Findings"));
    }

    @Test
    void findingsLinkToTheirCells() {
        Cell place = cell(FindingsSection.of(REVIEW, Wording.POINT), 0, "Place");
        assertEquals(new Cell.Link("Layers!B4", REVIEW.findings().get(0).place()), place);
    }

    @Test
    void closureSharesAddUpToTheWhole() {
        TableView closures = ClosuresSection.of(REVIEW);
        double sum = 0;
        for (String column : List.of("Isolated", "In layers", "Unaccounted")) {
            sum += ((Cell.Number) cell(closures, 0, column)).value();
        }
        assertEquals(100, sum, 1e-9);
    }

    @Test
    void yieldHasTheDecimalsOfItsUncertainty() {
        Cell.Number yield = (Cell.Number) cell(YieldsSection.of(REVIEW), 0, "Yield");
        assertEquals(80.02, yield.value(), 1e-9);
        assertEquals(2, yield.decimals());
        assertEquals(85, ((Cell.Number) cell(YieldsSection.of(REVIEW), 0, "Planned")).value(), 1e-12);
    }

    @Test
    void basisNamesTheInputWithItsHash() {
        TableView basis = BasisSection.of(REVIEW);
        assertTrue(basis.rows().stream().anyMatch(row -> row.cells().contains(Cell.of("0".repeat(64)))));
    }
}
