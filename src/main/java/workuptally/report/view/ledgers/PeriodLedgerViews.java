package workuptally.report.view.ledgers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.period.PeriodReview;
import workuptally.report.view.sheets.SolventsSection;
import workuptally.report.view.sheets.WasteSection;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;
import workuptally.tally.waste.SolventUse;
import workuptally.tally.waste.WasteLine;

/** The ledgers of a period over many books, one line per run and solvent, and one per run and layer. */
public final class PeriodLedgerViews {
    private PeriodLedgerViews() {}

    /** Solvents of every run of the period. */
    public static TableView solvents(PeriodReview review) {
        List<Column> columns = Ledgers.runColumns();
        columns.addAll(Ledgers.solventColumns());
        return TableView.of(
                SolventsSection.TITLE,
                SolventsSection.NOTE,
                columns,
                review.lines(),
                line -> line.run().solvents().stream().map(use -> row(line, use)));
    }

    private static TableView.Row row(PeriodReview.Line line, SolventUse use) {
        List<Cell> cells = head(line);
        cells.addAll(Ledgers.solvent(use));
        return new TableView.Row(cells, Optional.empty());
    }

    /** Layers of every run of the period, with the stream that their make-up suggests. */
    public static TableView waste(PeriodReview review) {
        return TableView.of(
                WasteSection.TITLE,
                WasteSection.NOTE,
                Ledgers.wasteColumns(),
                review.lines(),
                line -> line.run().waste().stream().map(waste -> row(line, waste)));
    }

    private static TableView.Row row(PeriodReview.Line line, WasteLine waste) {
        List<Cell> cells = head(line);
        cells.addAll(Ledgers.waste(waste));
        return new TableView.Row(cells, Optional.empty());
    }

    private static List<Cell> head(PeriodReview.Line line) {
        return new ArrayList<>(List.of(
                Cell.of(line.book()),
                Cell.of(line.run().date().map(Object::toString).orElse("")),
                Cell.of(line.run().run())));
    }
}
