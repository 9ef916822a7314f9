package workuptally.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.judgement.period.PeriodReview;
import workuptally.tally.SolventUse;
import workuptally.tally.WasteLine;

/** The ledgers of a period over many books, one line per run and solvent, and one per run and layer. */
public final class PeriodLedgers {
    private PeriodLedgers() {}

    /** Solvents of every run of the period. */
    public static TableView solvents(PeriodReview review) {
        List<TableView.Row> rows = new ArrayList<>();
        for (PeriodReview.Line line : review.lines()) {
            for (SolventUse use : line.run().solvents()) {
                List<Cell> cells = head(line);
                cells.addAll(SolventsSection.cells(use));
                rows.add(new TableView.Row(cells, Optional.empty()));
            }
        }
        List<Column> columns = columns();
        columns.addAll(SolventsSection.columns());
        return new TableView(SolventsSection.TITLE, SolventsSection.NOTE, columns, rows);
    }

    /** Layers of every run of the period, with the stream that their make-up suggests. */
    public static TableView waste(PeriodReview review) {
        List<TableView.Row> rows = new ArrayList<>();
        for (PeriodReview.Line line : review.lines()) {
            for (WasteLine waste : line.run().waste()) {
                List<Cell> cells = head(line);
                cells.add(Cell.of(waste.layer()));
                cells.add(Cell.of(waste.stream()));
                cells.add(Cell.of(waste.streamName()));
                cells.add(Cell.of(waste.why()));
                cells.add(Cell.of(waste.massGrams()));
                cells.add(Words.yesNo(waste.kept()));
                rows.add(new TableView.Row(cells, Optional.empty()));
            }
        }
        List<Column> columns = columns();
        columns.addAll(List.of(
                Column.text("Layer", 14),
                Column.text("Stream key", 24),
                Column.text("Stream", 34),
                Column.text("Why", 50),
                Column.number("Mass", "g", 1),
                Column.text("Kept", 8)));
        return new TableView(WasteSection.TITLE, WasteSection.NOTE, columns, rows);
    }

    private static List<Column> columns() {
        return new ArrayList<>(List.of(Column.text("Book", 24), Column.text("Date", 12), Column.text("Run", 14)));
    }

    private static List<Cell> head(PeriodReview.Line line) {
        return new ArrayList<>(List.of(
                Cell.of(line.book()),
                Cell.of(line.run().date().map(Object::toString).orElse("")),
                Cell.of(line.run().run())));
    }
}
