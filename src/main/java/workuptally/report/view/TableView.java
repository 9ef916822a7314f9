package workuptally.report.view;

import java.util.List;
import java.util.Optional;
import workuptally.model.Severity;

/**
 * A result table.
 *
 * @param title sheet name and heading, for example {@code Yields}
 * @param note one or two sentences above the table
 * @param columns columns
 * @param rows rows, each with a cell per column
 */
public record TableView(String title, String note, List<Column> columns, List<Row> rows) {
    /** Copies the lists and checks the width of every row. */
    public TableView {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (Row row : rows) {
            if (row.cells().size() != columns.size()) {
                throw new IllegalArgumentException(title + ": " + row.cells().size() + " cells for " + columns.size());
            }
        }
    }

    /**
     * A row.
     *
     * @param cells cells
     * @param severity severity that marks the row, if any
     */
    public record Row(List<Cell> cells, Optional<Severity> severity) {
        /** Copies the list. */
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
