package workuptally.report.workbook;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Severity;
import workuptally.report.view.tables.Cell;
import workuptally.report.view.tables.Column;
import workuptally.report.view.tables.Live;
import workuptally.report.view.tables.TableView;

/** Writes the rows of one result sheet, and its links behind them. */
final class ResultRows {
    /** Stands in a table without rows. */
    static final String NONE = "none";

    private static final int CHART_LINK_COLUMN = 2;
    private static final int LONGEST_FORMULA = 8000;

    private final ResultSheet sheet;
    private final ResultBook book;
    private final SheetLayout layout;
    private final Writer out;
    private final CellText cells;
    private final StringBuilder links = new StringBuilder();

    /**
     * Rows of a sheet.
     *
     * @param sheet the sheet
     * @param book what the sheets have in common
     * @param out where the text goes
     */
    ResultRows(ResultSheet sheet, ResultBook book, Writer out) {
        this.sheet = sheet;
        this.book = book;
        this.layout = new SheetLayout(sheet);
        this.out = out;
        this.cells = new CellText(
                out, Math.max(CHART_LINK_COLUMN + 1, sheet.view().columns().size()));
    }

    /** Writes everything from the start tag of the cells to the end tag of the links. */
    void write() throws IOException {
        out.write("<sheetData>\n");
        head();
        int row = 0;
        for (TableView.Row values : (Iterable<TableView.Row>) sheet.view().stream()::iterator) {
            row(row++, values);
        }
        if (row == 0) {
            line(
                    sheet.firstRow(),
                    "none",
                    book.styles().text(NONE, Optional.empty()).getIndex());
        }
        out.write("</sheetData>");
        if (links.length() > 0) {
            out.write("<hyperlinks>");
            out.append(links);
            out.write("</hyperlinks>");
        }
    }

    /** Title, notes and headings. */
    private void head() throws IOException {
        TableView view = sheet.view();
        ResultStyles styles = book.styles();
        cells.beginRow(0, 0);
        cells.text(0, styles.title().getIndex(), view.title());
        if (ResultCharts.has(view.title(), book.tables())) {
            cells.text(CHART_LINK_COLUMN, styles.shortLink().getIndex(), "Chart below the table");
            link(CHART_LINK_COLUMN, ResultCells.address(sheet.sheetName(), ResultCharts.firstRow(sheet), 0));
        }
        cells.endRow();
        int row = 1;
        for (String line : view.note().lines().toList()) {
            line(row++, line, styles.note().getIndex());
        }
        cells.beginRow(sheet.headingRow(), layout.headingPoints(view.columns()));
        for (int i = 0; i < view.columns().size(); i++) {
            Column column = view.columns().get(i);
            cells.text(i, styles.heading(column.isNumber()).getIndex(), column.heading());
        }
        cells.endRow();
    }

    private void line(int row, String text, int style) throws IOException {
        cells.beginRow(row, 0);
        cells.text(0, style, text);
        cells.endRow();
    }

    private void row(int number, TableView.Row values) throws IOException {
        cells.beginRow(sheet.firstRow() + number, layout.heightPoints(values));
        List<Column> columns = sheet.view().columns();
        int marked = ResultCells.markedColumn(values);
        for (int i = 0; i < columns.size(); i++) {
            Cell cell = values.cells().get(i);
            Optional<Severity> severity = i == marked ? values.severity() : Optional.empty();
            if (ResultCells.isWritten(cell, severity)) {
                int style = book.cells().style(columns.get(i), cell, severity);
                if (cell instanceof Cell.Number figure) {
                    number(i, style, figure, number, values);
                } else {
                    cells.text(i, style, cell.shown());
                    Optional<String> target = book.cells().target(cell);
                    if (target.isPresent()) {
                        link(i, target.get());
                    }
                }
            }
        }
        cells.endRow();
    }

    private void number(int column, int style, Cell.Number figure, int row, TableView.Row values) throws IOException {
        Optional<String> formula = formula(figure, row, values);
        if (formula.isPresent()) {
            cells.formula(column, style, formula.get(), figure.value());
        } else {
            cells.number(column, style, figure.value());
        }
    }

    /** The formula behind a number where it gives that number, and none where it does not. */
    private Optional<String> formula(Cell.Number figure, int row, TableView.Row values) {
        if (figure.live().isEmpty()) {
            return Optional.empty();
        }
        Live live = figure.live().get();
        LiveRow sheets = new LiveRow(book, sheet, row, values);
        OptionalDouble value = live.value(sheets);
        return value.isPresent() && Live.agree(value.getAsDouble(), figure.value())
                ? Optional.of(live.formula(sheets)).filter(formula -> formula.length() <= LONGEST_FORMULA)
                : Optional.empty();
    }

    private void link(int column, String target) {
        links.append("<hyperlink location=\"").append(XmlText.of(target)).append("\" ref=\"");
        links.append(cells.reference(column)).append("\"/>");
    }
}
