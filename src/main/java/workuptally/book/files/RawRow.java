package workuptally.book.files;

import java.util.List;
import java.util.Optional;

/**
 * A row as the file stores it.
 *
 * @param row row from 1
 * @param line line of the file from 1 for CSV; the row for a workbook
 * @param cells cells that hold something, by rising column
 */
public record RawRow(int row, int line, List<RawCell> cells) {
    /** The cell of a column. */
    public Optional<RawCell> cell(int column) {
        // a cell cannot stand further right in the list than its column says
        for (int i = Math.min(column, cells.size() - 1); i >= 0; i--) {
            RawCell cell = cells.get(i);
            if (cell.column() <= column) {
                return cell.column() == column ? Optional.of(cell) : Optional.empty();
            }
        }
        return Optional.empty();
    }
}
