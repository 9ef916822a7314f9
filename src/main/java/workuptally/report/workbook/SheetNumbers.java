package workuptally.report.workbook;

import java.util.Arrays;
import java.util.OptionalDouble;

/** The numbers that stand in the cells of a sheet; a large book has a million of them, which are kept in as little room as they need. */
final class SheetNumbers {
    /** Rows that hold numbers, ascending, and where the numbers of each begin. */
    private int[] rows = new int[16];

    private int[] starts = new int[16];
    private int rowCount;

    private char[] columns = new char[64];
    private double[] values = new double[64];
    private int size;

    /**
     * Notes a number. Cells come from left to right and from top to bottom; one that does not, or that is outside any sheet, is passed
     * over: no spreadsheet program writes it.
     *
     * @param row row from 1
     * @param column column from 0
     */
    void add(int row, int column, double value) {
        int last = rowCount == 0 ? 0 : rows[rowCount - 1];
        boolean isCell = row > 0 && column >= 0 && column <= Character.MAX_VALUE;
        if (!isCell || row < last || (row == last && column <= columns[size - 1])) {
            return;
        }
        if (row > last) {
            begin(row);
        }
        if (size == values.length) {
            columns = Arrays.copyOf(columns, more(size));
            values = Arrays.copyOf(values, more(size));
        }
        columns[size] = (char) column;
        values[size++] = value;
    }

    private void begin(int row) {
        if (rowCount == rows.length) {
            rows = Arrays.copyOf(rows, more(rowCount));
            starts = Arrays.copyOf(starts, more(rowCount));
        }
        rows[rowCount] = row;
        starts[rowCount++] = size;
    }

    private static int more(int room) {
        return room + room / 2;
    }

    /**
     * The number in a cell; empty if it holds none.
     *
     * @param row row from 1
     * @param column column from 0
     */
    OptionalDouble at(int row, int column) {
        int found = Arrays.binarySearch(rows, 0, rowCount, row);
        if (found < 0 || column > Character.MAX_VALUE) {
            return OptionalDouble.empty();
        }
        int end = found + 1 < rowCount ? starts[found + 1] : size;
        int position = Arrays.binarySearch(columns, starts[found], end, (char) column);
        return position < 0 ? OptionalDouble.empty() : OptionalDouble.of(values[position]);
    }
}
