package workuptally.report.view.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import workuptally.model.Severity;
import workuptally.report.view.wording.FiguresInText;
import workuptally.report.view.wording.Wording;

/**
 * A result table. Its rows are made when they are asked for and each time anew, since those of a large book would fill the memory.
 */
public final class TableView {
    /** Columns whose texts name things as the book or a document has them. */
    private static final Set<String> AS_WRITTEN = Set.of(
            "Source",
            "Origin",
            "Place",
            "Cell",
            "Book",
            "Run",
            "Layer",
            "Layers",
            "Lot",
            "Lots",
            "Container",
            "Transfer",
            "Series");

    private final String title;
    private final String note;
    private final List<Column> columns;
    private final Supplier<Stream<Row>> rows;
    private final List<Name> names;

    private TableView(String title, String note, List<Column> columns, Supplier<Stream<Row>> rows, List<Name> names) {
        this.title = title;
        this.note = note;
        this.columns = List.copyOf(columns);
        this.rows = rows;
        this.names = List.copyOf(names);
    }

    /**
     * A short table.
     *
     * @param title sheet name and heading, for example {@code Yields}
     * @param note one or two sentences above the table
     * @param columns columns
     * @param rows rows, each with a cell per column
     */
    public static TableView of(String title, String note, List<Column> columns, List<Row> rows) {
        List<Row> kept = List.copyOf(rows);
        return new TableView(title, note, columns, kept::stream, List.of());
    }

    /**
     * A table with some rows for each of many things.
     *
     * @param title sheet name and heading
     * @param note one or two sentences above the table
     * @param columns columns
     * @param things what the table is about, for example runs
     * @param rowsOf rows of one of them, each with a cell per column; the same whenever it is asked
     */
    public static <T> TableView of(
            String title, String note, List<Column> columns, List<T> things, Function<T, Stream<Row>> rowsOf) {
        return new TableView(title, note, columns, () -> things.stream().flatMap(rowsOf), List.of());
    }

    /** The same table with more rows at its end. */
    public TableView followedBy(List<Row> last) {
        List<Row> kept = List.copyOf(last);
        return new TableView(title, note, columns, () -> Stream.concat(rows.get(), kept.stream()), names);
    }

    /** The same table with names for some of its numbers. */
    public TableView naming(List<Name> named) {
        return new TableView(title, note, columns, rows, named);
    }

    /** The same table with the reader's decimal mark in its texts; what cites a source, or names a run, file or cell, stays. */
    public TableView readBy(Wording wording) {
        if (wording.mark() == '.') {
            return this;
        }
        boolean[] asWritten = new boolean[columns.size()];
        for (int i = 0; i < asWritten.length; i++) {
            asWritten[i] = AS_WRITTEN.contains(columns.get(i).name());
        }
        return new TableView(
                title,
                FiguresInText.with(wording.mark(), note),
                columns,
                () -> rows.get().map(row -> readBy(row, asWritten, wording.mark())),
                names);
    }

    private static Row readBy(Row row, boolean[] asWritten, char mark) {
        List<Cell> cells = new ArrayList<>(row.cells());
        for (int i = 0; i < cells.size() && i < asWritten.length; i++) {
            if (!asWritten[i]) {
                cells.set(i, readBy(cells.get(i), mark));
            }
        }
        return new Row(cells, row.severity());
    }

    private static Cell readBy(Cell cell, char mark) {
        if (cell instanceof Cell.Text text) {
            return new Cell.Text(FiguresInText.with(mark, text.shown()));
        }
        return cell instanceof Cell.Missing missing
                ? new Cell.Missing(FiguresInText.with(mark, missing.shown()))
                : cell;
    }

    /** Names that some of its numbers have. */
    public List<Name> names() {
        return names;
    }

    /** Sheet name and heading. */
    public String title() {
        return title;
    }

    /** One or two sentences above the table. */
    public String note() {
        return note;
    }

    /** Columns. */
    public List<Column> columns() {
        return columns;
    }

    /**
     * The rows, one after the other, each with a cell per column.
     *
     * @throws IllegalArgumentException at a row of another width
     */
    public Stream<Row> stream() {
        return rows.get().peek(this::requireCellPerColumn);
    }

    /** All rows at once: for tables that are known to be short. */
    public List<Row> rows() {
        return stream().toList();
    }

    private void requireCellPerColumn(Row row) {
        if (row.cells().size() != columns.size()) {
            throw new IllegalArgumentException(title + ": " + row.cells().size() + " cells for " + columns.size());
        }
    }

    /**
     * A name for a number, by which formulas of a workbook refer to it.
     *
     * @param name letters, digits and underscores, the first a letter
     * @param row row from 0
     * @param column name of the column
     */
    public record Name(String name, int row, String column) {}

    /**
     * A row.
     *
     * @param cells cells
     * @param severity severity that marks the row, if any
     */
    public record Row(List<Cell> cells, Optional<Severity> severity) {
        /** Copies the list. */
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
