package workuptally.report.workbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.TableView;

/**
 * What is kept of a table while its rows pass by for the first time: how many there are, the first ones, and the numbers, to which
 * formulas on other sheets may refer. The rows themselves are made again when they are written.
 */
final class TableSurvey {
    /** Enough to choose the widths of the columns and to draw a chart. */
    private static final int FIRST_ROWS = 500;

    private final List<TableView.Row> firstRows = new ArrayList<>();
    private final double[][] numbers;
    private final BitSet[] present;
    private int rows;

    /**
     * A survey of no row yet.
     *
     * @param columns number of columns
     */
    TableSurvey(int columns) {
        numbers = new double[columns][0];
        present = new BitSet[columns];
        Arrays.setAll(present, i -> new BitSet());
    }

    /** Takes note of the next row. */
    void add(TableView.Row row) {
        for (int column = 0; column < numbers.length; column++) {
            if (row.cells().get(column) instanceof Cell.Number number) {
                if (rows >= numbers[column].length) {
                    numbers[column] = Arrays.copyOf(numbers[column], Math.max(16, rows + rows / 2));
                }
                numbers[column][rows] = number.value();
                present[column].set(rows);
            }
        }
        if (rows < FIRST_ROWS) {
            firstRows.add(row);
        }
        rows++;
    }

    /** Number of rows. */
    int rows() {
        return rows;
    }

    /** The first rows of the table, at most 500. */
    List<TableView.Row> firstRows() {
        return firstRows;
    }

    /** The number in a cell, if it holds one. */
    OptionalDouble number(int row, int column) {
        return present[column].get(row) ? OptionalDouble.of(numbers[column][row]) : OptionalDouble.empty();
    }
}
