package workuptally.book;

import java.util.List;
import java.util.Optional;

/**
 * A row as the file stores it.
 *
 * @param row row from 1
 * @param line line of the file from 1 for CSV; the row for a workbook
 * @param cells cells that exist, by rising column
 */
record RawRow(int row, int line, List<RawCell> cells) {
    Optional<RawCell> cell(int column) {
        for (RawCell cell : cells) {
            if (cell.column() == column) {
                return Optional.of(cell);
            }
        }
        return Optional.empty();
    }
}
