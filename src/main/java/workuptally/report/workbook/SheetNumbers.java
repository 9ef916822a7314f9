package workuptally.report.workbook;

import java.util.Arrays;
import java.util.OptionalDouble;

/** The numbers that stand in the cells of a sheet; a large book has a million of them, which are kept in as little room as they need. */
final class SheetNumbers {
    private long[] cells = new long[64];
    private double[] values = new double[64];
    private int size;

    /**
     * Notes a number. Cells come from left to right and from top to bottom; one that does not is passed over, since no spreadsheet
     * program writes it.
     *
     * @param row row from 1
     * @param column column from 0
     */
    void add(int row, int column, double value) {
        long cell = cell(row, column);
        if (size > 0 && cell <= cells[size - 1]) {
            return;
        }
        if (size == cells.length) {
            cells = Arrays.copyOf(cells, 2 * size);
            values = Arrays.copyOf(values, 2 * size);
        }
        cells[size] = cell;
        values[size++] = value;
    }

    /**
     * The number in a cell; empty if it holds none.
     *
     * @param row row from 1
     * @param column column from 0
     */
    OptionalDouble at(int row, int column) {
        int found = Arrays.binarySearch(cells, 0, size, cell(row, column));
        return found < 0 ? OptionalDouble.empty() : OptionalDouble.of(values[found]);
    }

    private static long cell(int row, int column) {
        return (long) row << Integer.SIZE | column;
    }
}
