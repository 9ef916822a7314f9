package workuptally.report.workbook;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.TableView;

/**
 * What is kept of a table while its rows pass by for the first time: how many there are, the first ones, and of the others the numbers at
 * which formulas of other sheets look. The rows themselves are made again when they are written.
 */
final class TableSurvey {
    /** Enough to choose the widths of the columns, to draw a chart, and to see at which columns of other tables the rows look. */
    static final int FIRST_ROWS = 500;

    private final TableView view;
    private final boolean whole;
    private final List<TableView.Row> firstRows;

    /** By column, from the row behind the first ones on; NaN where a cell holds none. Nothing where no formula looks at the column. */
    private final double[][] numbers;

    private int rows;

    /**
     * A survey of the first rows.
     *
     * @param view the table
     */
    TableSurvey(TableView view) {
        this.view = view;
        List<TableView.Row> first = view.stream().limit(FIRST_ROWS + 1).toList();
        whole = first.size() <= FIRST_ROWS;
        firstRows = whole ? first : List.copyOf(first.subList(0, FIRST_ROWS));
        rows = firstRows.size();
        numbers = new double[view.columns().size()][];
    }

    /** Asks the first rows at which columns of other tables they look; a number with a name is looked at too. */
    void ask(LookedAt lookedAt) {
        view.names().forEach(name -> lookedAt.add(view.title(), name.column()));
        firstRows.forEach(row -> row.cells().forEach(cell -> {
            if (cell instanceof Cell.Number number) {
                number.live().ifPresent(live -> live.value(lookedAt));
            }
        }));
    }

    /** Every row of the table in order, while the numbers of those behind the first ones are noted. */
    Stream<TableView.Row> take(LookedAt lookedAt) {
        if (whole) {
            return firstRows.stream();
        }
        List<Column> columns = view.columns();
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = lookedAt.has(view.title(), columns.get(i).name()) ? new double[FIRST_ROWS] : null;
        }
        rows = 0;
        return view.stream().peek(this::note);
    }

    private void note(TableView.Row row) {
        int behind = rows++ - firstRows.size();
        for (int i = 0; behind >= 0 && i < numbers.length; i++) {
            if (numbers[i] != null) {
                if (behind >= numbers[i].length) {
                    numbers[i] = Arrays.copyOf(numbers[i], behind + behind / 4);
                }
                numbers[i][behind] = in(row, i).orElse(Double.NaN);
            }
        }
    }

    /** Number of rows. */
    int rows() {
        return rows;
    }

    /** The first rows of the table, at most 500. */
    List<TableView.Row> firstRows() {
        return firstRows;
    }

    /** The number in a cell, if it holds one. A column at which none of the first rows looks is gone through anew. */
    OptionalDouble number(int row, int column) {
        int behind = row - firstRows.size();
        if (behind < 0) {
            return in(firstRows.get(row), column);
        }
        if (numbers[column] == null) {
            return view.stream().skip(row).findFirst().map(r -> in(r, column)).orElse(OptionalDouble.empty());
        }
        double number = behind < numbers[column].length && row < rows ? numbers[column][behind] : Double.NaN;
        return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
    }

    private static OptionalDouble in(TableView.Row row, int column) {
        return row.cells().get(column) instanceof Cell.Number number
                ? OptionalDouble.of(number.value())
                : OptionalDouble.empty();
    }
}
