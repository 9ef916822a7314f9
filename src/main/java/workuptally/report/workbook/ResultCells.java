package workuptally.report.workbook;

import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.util.CellAddress;
import workuptally.model.Severity;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;

/** Looks and links of the cells of result sheets. */
final class ResultCells {
    private final ResultStyles styles;
    private final Map<String, String> userSheets;
    private final Map<String, ResultSheet> tables;

    /**
     * For a workbook.
     *
     * @param userSheets names of the user's sheets by key
     * @param tables result sheets by title
     */
    ResultCells(ResultStyles styles, Map<String, String> userSheets, Map<String, ResultSheet> tables) {
        this.styles = styles;
        this.userSheets = userSheets;
        this.tables = tables;
    }

    /** The column that shows the severity of its row: the one that names it, else the first one; -1 for a row without. */
    static int markedColumn(TableView.Row row) {
        if (row.severity().isEmpty()) {
            return -1;
        }
        String word = row.severity().get().word();
        for (int i = 0; i < row.cells().size(); i++) {
            if (row.cells().get(i).shown().equals(word)) {
                return i;
            }
        }
        return 0;
    }

    /** True for a cell that is written: one that shows something, or is marked. */
    static boolean isWritten(Cell cell, Optional<Severity> severity) {
        return cell instanceof Cell.Number || !cell.shown().isEmpty() || severity.isPresent();
    }

    /** Style number of a cell; makes the style where it is the first of its kind. */
    int style(Column column, Cell cell, Optional<Severity> severity) {
        if (cell instanceof Cell.Number number) {
            int decimals = number.decimals() == Cell.Number.AS_COLUMN ? column.decimals() : number.decimals();
            return styles.number(Math.max(0, decimals), severity).getIndex();
        }
        return (target(cell).isPresent() ? styles.link() : styles.text(cell.shown(), severity)).getIndex();
    }

    /** Where a cell leads to, as the address of a link; empty for no link, or one to a place that the workbook does not have. */
    Optional<String> target(Cell cell) {
        if (cell instanceof Cell.Link link) {
            String name = userSheets.get(SheetMarks.key(link.place().sheet()));
            if (name != null && link.place().row() >= 1) {
                return Optional.of(address(
                        name, link.place().row() - 1, Math.max(0, link.place().column())));
            }
        }
        if (cell instanceof Cell.Jump jump && tables.containsKey(jump.title())) {
            ResultSheet other = tables.get(jump.title());
            return Optional.of(address(other.sheetName(), other.firstRow() + jump.row(), 0));
        }
        return Optional.empty();
    }

    /**
     * The address of a cell as links want it.
     *
     * @param row row from 0
     * @param column column from 0
     */
    static String address(String sheetName, int row, int column) {
        return ResultSheet.quoted(sheetName) + "!" + new CellAddress(row, column).formatAsString();
    }
}
