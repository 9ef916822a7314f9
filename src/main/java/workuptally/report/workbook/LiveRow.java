package workuptally.report.workbook;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellReference;
import workuptally.model.Place;
import workuptally.report.view.Cell;
import workuptally.report.view.Live;
import workuptally.report.view.TableView;

/** Addresses and values as one row of a result table sees them. */
final class LiveRow implements Live.Sheets {
    private final Entries entries;
    private final Map<String, String> userSheets;
    private final Map<String, ResultSheet> tables;
    private final ResultSheet own;
    private final int row;

    /**
     * A row.
     *
     * @param entries numbers in the user's sheets
     * @param userSheets names of the user's sheets by key
     * @param tables result sheets by title
     * @param own result sheet of the row
     * @param row row of the table, from 0
     */
    LiveRow(
            Entries entries,
            Map<String, String> userSheets,
            Map<String, ResultSheet> tables,
            ResultSheet own,
            int row) {
        this.entries = entries;
        this.userSheets = userSheets;
        this.tables = tables;
        this.own = own;
        this.row = row;
    }

    @Override
    public String address(Place entry) {
        String sheet = userSheets.getOrDefault(SheetMarks.key(entry.sheet()), entry.sheet());
        return ResultSheet.quoted(sheet) + "!" + Entries.address(entry).formatAsString();
    }

    @Override
    public OptionalDouble value(Place entry) {
        return entries.number(entry);
    }

    @Override
    public String address(String column) {
        return cell(own, row, column).formatAsString();
    }

    @Override
    public OptionalDouble value(String column) {
        return number(own.view().rows().get(row), own.column(column));
    }

    @Override
    public String address(String table, int tableRow, String column) {
        ResultSheet other = tables.get(table);
        return ResultSheet.quoted(other.sheetName()) + "!"
                + cell(other, tableRow, column).formatAsString();
    }

    @Override
    public OptionalDouble value(String table, int tableRow, String column) {
        ResultSheet other = tables.get(table);
        return number(other.view().rows().get(tableRow), other.column(column));
    }

    @Override
    public String range(String table, String column) {
        ResultSheet other = tables.get(table);
        String letters = CellReference.convertNumToColString(other.column(column));
        return ResultSheet.quoted(other.sheetName()) + "!$" + letters + "$" + (other.firstRow() + 1) + ":$" + letters
                + "$" + (other.lastRow() + 1);
    }

    @Override
    public double sumWhere(String table, String column, String keyColumn, String ownKeyColumn) {
        String key =
                own.view().rows().get(row).cells().get(own.column(ownKeyColumn)).shown();
        ResultSheet other = tables.get(table);
        int keys = other.column(keyColumn);
        int values = other.column(column);
        List<TableView.Row> rows = other.view().rows();
        return rows.stream()
                .filter(r -> r.cells().get(keys).shown().equalsIgnoreCase(key))
                .mapToDouble(r -> number(r, values).orElse(0))
                .sum();
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
