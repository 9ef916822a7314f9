package workuptally.book.tables;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Consumer;
import workuptally.book.cells.BookMarks;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.headings.OwnListFeed;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.schema.Need;
import workuptally.book.schema.Schema;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;
import workuptally.model.FindingCode;
import workuptally.model.Place;
import workuptally.model.RowPlace;
import workuptally.model.Severity;

/** The rows of one table of the book, from below its headings to its end, blank ones passed over. */
public final class TableRows {
    /** Each merged region is looked at for each row, so that more would only cost time. */
    private static final int MOST_MERGED = 1_000;

    private final RawTable raw;
    private final Table table;
    private final MatchedHeadings headings;
    private final FindingLog log;

    /** Which rows are meant at all. */
    private final BiPredicate<RawRow, MatchedHeadings> wanted;

    /** Merged cells that take something from the data. */
    private final List<RawTable.MergedRegion> merged;

    private final Optional<RunColumn> runs;

    private TableRows(
            RawTable raw,
            Table table,
            MatchedHeadings headings,
            BiPredicate<RawRow, MatchedHeadings> wanted,
            FindingLog log)
            throws UnreadableBookException {
        this.raw = raw;
        this.table = table;
        this.headings = headings;
        this.wanted = wanted;
        this.log = log;
        this.runs = RunColumn.of(raw, table, headings);
        this.merged = raw.mergedRegions().stream()
                .filter(region -> region.lastRow() > headings.row())
                .filter(region -> runs.filter(r -> r.isMerged(region)).isEmpty())
                .filter(region -> firstHeadingIn(region).isPresent())
                .toList();
        if (merged.size() > MOST_MERGED) {
            throw new UnreadableBookException("The table " + raw.sheet() + " in " + raw.file() + " has more than "
                    + MOST_MERGED + " merged cells: split them in a spreadsheet program, fill each and save.");
        }
    }

    /**
     * Matches a raw table with the form.
     *
     * @return the rows, or nothing if the table lacks the headings that place a row; this is reported
     * @throws UnreadableBookException if that table is the one a book needs
     */
    public static Optional<TableRows> of(
            RawTable raw, Table table, HeadingAliases aliases, BookMarks marks, FindingLog log)
            throws UnreadableBookException {
        Optional<MatchedHeadings> headings = MatchedHeadings.find(raw, table, aliases, marks, log);
        List<String> missing = headings.map(found -> found.missing(table)).orElse(table.keyHeadings());
        if (headings.isPresent() && missing.isEmpty()) {
            return Optional.of(new TableRows(raw, table, headings.get(), (row, all) -> true, log));
        }
        String wanted = String.join(
                ", ", missing.isEmpty() ? List.of(table.columns().get(0).heading()) : missing);
        if (table == Schema.RUNS) {
            throw new UnreadableBookException("The table " + raw.sheet() + " in " + raw.file() + " lacks the heading "
                    + wanted + ": add it, or name the laboratory's own in a headings file.");
        }
        if (headings.isPresent() || !raw.rows().isEmpty()) {
            log.add(
                    FindingCode.HEADING_MISSING,
                    Severity.STOP,
                    "",
                    new Place(raw.file(), raw.sheet(), 1, -1, ""),
                    "read a table without the heading " + wanted,
                    "the headings " + String.join(", ", table.keyHeadings()),
                    "Add the heading and run again; the table was left out.");
        }
        return Optional.empty();
    }

    /**
     * The rows that a feed takes from a laboratory's own list.
     *
     * @param wanted tells the rows that it takes
     * @throws UnreadableBookException if the list has too many merged cells
     */
    public static TableRows ofList(
            RawTable raw,
            OwnListFeed feed,
            MatchedHeadings headings,
            BiPredicate<RawRow, MatchedHeadings> wanted,
            FindingLog log)
            throws UnreadableBookException {
        return new TableRows(raw, feed.table(), headings, wanted, log);
    }

    /** Hands over each row that holds something. */
    void forEach(Consumer<TableRow> reader) {
        forEach(reader, row -> {});
    }

    /**
     * The same.
     *
     * @param leftOut takes the rows that were reported and left out, whose cells may stand under wrong headings
     */
    void forEach(Consumer<TableRow> reader, Consumer<TableRow> leftOut) {
        Map<String, SchemaColumn> columns = table.columnsByHeading();
        Recurring recurring = new Recurring();
        reportMerged();
        runs.ifPresent(r -> r.report(log));
        RowsAside.report(raw, headings.row(), log);
        MatchedHeadings inForce = headings;
        for (RawRow row : raw.rows()) {
            if (headings.isOfList()) {
                if (row.row() > headings.row() && wanted.test(row, headings)) {
                    readRow(new TableRow(withMerged(row), headings, columns, log, recurring), reader, leftOut);
                }
            } else if (row.row() > headings.row()) {
                Optional<MatchedHeadings> own = inForce.repeatedIn(row, raw, table, log);
                if (own.isPresent()) {
                    inForce = own.get();
                } else if (inForce.isShifted(row, table)) {
                    reportShifted(row, inForce);
                    leftOut.accept(new TableRow(row, inForce, columns, log, recurring));
                } else if (!inForce.takeUnits(row, table, log)) {
                    readRow(new TableRow(withMerged(row), inForce, columns, log, recurring), reader, leftOut);
                }
            }
        }
    }

    private void readRow(TableRow row, Consumer<TableRow> reader, Consumer<TableRow> leftOut) {
        if (!row.isBlank()) {
            (isStruckOut(row) ? leftOut : reader).accept(row);
        }
    }

    /** True where what places the row is struck out: the row then does not count, and is reported for what else stands in it. */
    private boolean isStruckOut(TableRow row) {
        Optional<String> key = table.keyHeadings().stream()
                .filter(heading -> row.cell(heading).filter(RawCell::isStruck).isPresent())
                .findFirst();
        key.ifPresent(heading -> row.report(
                FindingCode.ROWS_STRUCK,
                Severity.CHECK,
                heading,
                "read '" + TableRow.seen(row.cell(heading).orElseThrow())
                        + "', struck out, in a row with other entries",
                "a row that is struck out as a whole, or not at all",
                "Strike out the whole row if it does not count, else take the strike off, and run again; the row was left"
                        + " out of " + table.name() + "."));
        return key.isPresent();
    }

    private void reportShifted(RawRow row, MatchedHeadings inForce) {
        boolean needed = table.columns().stream().anyMatch(column -> column.need() == Need.FIGURE);
        log.add(
                FindingCode.ROW_SHIFTED,
                needed ? Severity.STOP : Severity.CHECK,
                "",
                new RowPlace(inForce.place(), row.row(), row.line())
                        .at(table.columns().get(0).heading()),
                "read a line whose cells do not fit the headings",
                "a cell for each heading; a decimal comma needs quotes where commas part the cells",
                "Put the number in quotes or write a decimal point, and run again; the line was left out.");
    }

    private void reportMerged() {
        for (RawTable.MergedRegion region : merged) {
            firstHeadingIn(region).ifPresent(column -> {
                int row = Math.max(region.firstRow(), headings.row() + 1);
                log.add(
                        FindingCode.MERGED_CELLS,
                        column.need().severity(),
                        "",
                        new RowPlace(headings.place(), row, row).at(column.heading()),
                        "read merged cells over " + (region.lastRow() - region.firstRow() + 1) + " rows and "
                                + (region.lastColumn() - region.firstColumn() + 1) + " columns",
                        "one cell for each entry",
                        "Split the cells, fill each and run again; none of them was used.");
            });
        }
    }

    private Optional<SchemaColumn> firstHeadingIn(RawTable.MergedRegion region) {
        return table.columns().stream()
                .filter(column -> headings.has(column.heading()))
                .filter(column -> {
                    int at = headings.place().columns().get(column.heading());
                    return at >= region.firstColumn() && at <= region.lastColumn();
                })
                .findFirst();
    }

    private RawRow withMerged(RawRow typed) {
        RawRow row = runs.map(r -> r.filled(typed)).orElse(typed);
        if (merged.isEmpty()
                || merged.stream()
                        .noneMatch(region -> row.row() >= region.firstRow() && row.row() <= region.lastRow())) {
            return row;
        }
        java.util.TreeMap<Integer, RawCell> cells = new java.util.TreeMap<>();
        row.cells().forEach(cell -> cells.put(cell.column(), cell));
        for (Integer column : headings.place().columns().values()) {
            if (merged.stream().anyMatch(region -> region.covers(row.row(), column))) {
                cells.merge(column, RawCell.text(column, "").merged(), (own, none) -> own.merged());
            }
        }
        return new RawRow(row.row(), row.line(), List.copyOf(cells.values()));
    }
}
