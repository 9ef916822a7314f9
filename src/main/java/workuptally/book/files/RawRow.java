package workuptally.book.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A row as the file stores it.
 *
 * @param row row from 1
 * @param line line of the file from 1 for CSV; the row for a workbook
 * @param cells cells that hold something, by rising column
 * @param width cells that the file has for the row, blank ones at its end included; 0 where the file does not say
 */
public record RawRow(int row, int line, List<RawCell> cells, int width) {
    /** A row of which only the filled cells are known. */
    public RawRow(int row, int line, List<RawCell> cells) {
        this(row, line, cells, 0);
    }

    /** True where a whole number stands left of digits alone: {@code 1,5} that a comma between cells has parted. */
    public boolean holdsHalvesOfANumber() {
        return !halvesOfNumbers().isEmpty();
    }

    /** Columns of the left halves of such numbers, from the left. */
    public List<Integer> halvesOfNumbers() {
        List<Integer> halves = new ArrayList<>();
        for (int i = 1; i < cells.size(); i++) {
            RawCell left = cells.get(i - 1);
            RawCell right = cells.get(i);
            if (right.column() == left.column() + 1
                    && left.text().strip().matches("-?\\d+")
                    && right.text().strip().matches("\\d{1,4}(?: ?\\p{L}.*|%)?")) {
                halves.add(left.column());
            }
        }
        return halves;
    }

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
