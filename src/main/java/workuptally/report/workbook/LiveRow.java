package workuptally.report.workbook;

import java.util.OptionalDouble;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellReference;
import workuptally.model.Place;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.LiveSheets;
import workuptally.report.view.tables.TableView;

/** Addresses and values as one row of a result table sees them. */
final class LiveRow implements LiveSheets {
    private final ResultBook book;
    private final ResultSheet own;
    private final int row;
    private final TableView.Row values;

    /**
     * A row.
     *
     * @param book all sheets
     * @param own result sheet of the row
     * @param row row of the table, from 0
     * @param values the row
     */
    LiveRow(ResultBook book, ResultSheet own, int row, TableView.Row values) {
        this.book = book;
        this.own = own;
        this.row = row;
        this.values = values;
    }

    @Override
    public String address(Place entry) {
        String sheet = book.userSheets().getOrDefault(SheetMarks.key(entry.sheet()), entry.sheet());
        return ResultSheet.quoted(sheet) + "!" + EnteredNumbers.address(entry).formatAsString();
    }

    @Override
    public OptionalDouble value(Place entry) {
        return book.entries().number(entry);
    }

    @Override
    public String address(String column) {
        return cell(own, row, column).formatAsString();
    }

    @Override
    public OptionalDouble value(String column) {
        return number(values, own.column(column));
    }

    @Override
    public String address(String table, int tableRow, String column) {
        ResultSheet other = book.tables().get(table);
        return ResultSheet.quoted(other.sheetName()) + "!"
                + cell(other, tableRow, column).formatAsString();
    }

    @Override
    public OptionalDouble value(String table, int tableRow, String column) {
        ResultSheet other = book.tables().get(table);
        return other.survey().number(tableRow, other.column(column));
    }

    @Override
    public String range(String table, String column) {
        ResultSheet other = book.tables().get(table);
        String letters = CellReference.convertNumToColString(other.column(column));
        return ResultSheet.quoted(other.sheetName()) + "!$" + letters + "$" + (other.firstRow() + 1) + ":$" + letters
                + "$" + (other.lastRow() + 1);
    }

    @Override
    public double sumWhere(String table, String column, String keyColumn, String ownKeyColumn) {
        String key = values.cells().get(own.column(ownKeyColumn)).shown();
        ResultSheet other = book.tables().get(table);
        int keys = other.column(keyColumn);
        int valueColumn = other.column(column);
        return other.view().stream()
                .filter(r -> r.cells().get(keys).shown().equalsIgnoreCase(key))
                .mapToDouble(r -> number(r, valueColumn).orElse(0))
                .sum();
    }

    @Override
    public String nameOf(String name) {
        return book.names().get(name).shown();
    }

    @Override
    public OptionalDouble named(String name) {
        return book.names().containsKey(name)
                ? OptionalDouble.of(book.names().get(name).number())
                : OptionalDouble.empty();
    }

    private static CellAddress cell(ResultSheet sheet, int row, String column) {
        return new CellAddress(sheet.firstRow() + row, sheet.column(column));
    }

    private static OptionalDouble number(TableView.Row row, int column) {
        return row.cells().get(column) instanceof Cell.Number number
                ? OptionalDouble.of(number.value())
                : OptionalDouble.empty();
    }
}
