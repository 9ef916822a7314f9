package workuptally.book.tables;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.headings.MatchedHeadings;
import workuptally.book.schema.Need;
import workuptally.book.schema.Schema;
import workuptally.book.schema.Table;
import workuptally.book.words.DittoMark;
import workuptally.book.words.SameName;
import workuptally.model.FindingCode;
import workuptally.model.RowPlace;
import workuptally.model.Severity;

/**
 * The runs that rows of a table belong to, where not each of them repeats its run: merged over its rows, behind a ditto mark, or once in
 * the first row of its block. A cell merged over rows and a ditto mark say it; blocks are read where every run of the table stands once, and
 * that is told once for the table. A row without a run in any other table is left as it is.
 */
final class RunColumn {
    private static final String HEADING = "Run";

    /** Blank cells that make blocks of a table, and not slips. */
    private static final int LEAST_BLANK = 2;

    private final RawTable raw;
    private final MatchedHeadings headings;
    private final int column;
    private final Map<Integer, String> runs = new HashMap<>();
    private final List<RawRow> ofBlocks = new ArrayList<>();

    private RunColumn(RawTable raw, MatchedHeadings headings, int column) {
        this.raw = raw;
        this.headings = headings;
        this.column = column;
    }

    /** Of a table in which each row belongs to a run; nothing for any other. */
    static Optional<RunColumn> of(RawTable raw, Table table, MatchedHeadings headings) {
        boolean belongs = table != Schema.RUNS
                && table.columns().stream().anyMatch(c -> c.heading().equals(HEADING) && c.need() == Need.KEY);
        if (!belongs || headings.isOfList() || !headings.has(HEADING)) {
            return Optional.empty();
        }
        RunColumn found =
                new RunColumn(raw, headings, headings.place().columns().get(HEADING));
        found.read();
        return Optional.of(found);
    }

    /** True for a cell merged over rows of this column alone, below the headings: each of its rows is of the run that it shows. */
    boolean isMerged(RawTable.MergedRegion region) {
        return region.firstColumn() == column
                && region.lastColumn() == column
                && region.lastRow() > region.firstRow()
                && region.firstRow() > headings.row();
    }

    /** The row with its run. */
    RawRow filled(RawRow row) {
        String run = runs.get(row.row());
        if (run == null) {
            return row;
        }
        TreeMap<Integer, RawCell> cells = new TreeMap<>();
        row.cells().forEach(cell -> cells.put(cell.column(), cell));
        cells.put(column, RawCell.text(column, run));
        return new RawRow(row.row(), row.line(), List.copyOf(cells.values()), row.width());
    }

    /** Tells of rows that were taken as of the block they stand in. */
    void report(FindingLog log) {
        if (ofBlocks.isEmpty()) {
            return;
        }
        RawRow first = ofBlocks.get(0);
        log.add(
                FindingCode.RUN_MISSING,
                Severity.CHECK,
                "",
                new RowPlace(headings.place(), first.row(), first.line()).at(HEADING),
                "read " + ofBlocks.size() + " rows without a run, each below the only row of its run",
                "a run in each row",
                "Nothing if the rows below a run are its own: they were taken so. Else fill the run in each row and run"
                        + " again.");
    }

    private void read() {
        List<RawRow> rows = raw.rows().stream()
                .filter(row -> row.row() > headings.row() && holdsMore(row) && !isHeading(row))
                .toList();
        merged();
        boolean blocks = rows.stream().allMatch(this::isReadable) && isInBlocks(rows);
        String run = "";
        for (RawRow row : rows) {
            String typed = typed(row);
            boolean ditto = DittoMark.is(typed);
            boolean left = typed.isEmpty() || DittoMark.isDash(typed);
            if (!isReadable(row)) {
                run = ""; // what is struck out or has no value names no run for the rows below
            } else if (!run.isEmpty() && (ditto || left && blocks)) {
                runs.put(row.row(), run);
                if (!ditto) {
                    ofBlocks.add(row);
                }
            } else if (!left && !ditto) {
                run = typed;
            }
        }
    }

    private void merged() {
        TreeMap<Integer, RawRow> byNumber = new TreeMap<>();
        raw.rows().forEach(row -> byNumber.put(row.row(), row));
        int free = headings.row() + 1;
        List<RawTable.MergedRegion> fromTheTop = raw.mergedRegions().stream()
                .filter(this::isMerged)
                .sorted(Comparator.comparingInt(RawTable.MergedRegion::firstRow))
                .toList();
        for (RawTable.MergedRegion region : fromTheTop) {
            RawRow first = byNumber.get(region.firstRow());
            // no spreadsheet program lets merged cells overlap; a damaged file may
            if (first != null
                    && region.firstRow() >= free
                    && isReadable(first)
                    && !typed(first).isEmpty()) {
                String run = typed(first);
                byNumber.subMap(region.firstRow(), true, region.lastRow(), true)
                        .keySet()
                        .forEach(row -> runs.put(row, run));
                free = region.lastRow() + 1;
            }
        }
    }

    /** True for a blank cell and for one that shows a text or a number. */
    private boolean isReadable(RawRow row) {
        return row.cell(column)
                .filter(cell -> cell.type() != RawCell.Type.TEXT && !cell.isNumber())
                .isEmpty();
    }

    /** Every run stands once, in front of rows without one: a single blank cell is a slip, and a run named again is no block. */
    private boolean isInBlocks(List<RawRow> rows) {
        Set<String> seen = new HashSet<>();
        int blank = 0;
        for (RawRow row : rows) {
            String typed = typed(row);
            if (typed.isEmpty() || DittoMark.isDash(typed)) {
                blank++;
                if (seen.isEmpty()) {
                    return false;
                }
            } else if (!DittoMark.is(typed) && !runs.containsKey(row.row()) && !seen.add(SameName.key(typed))) {
                return false;
            }
        }
        return blank >= LEAST_BLANK && 2 * blank >= seen.size();
    }

    private String typed(RawRow row) {
        String ofMerged = runs.get(row.row());
        return ofMerged != null
                ? ofMerged
                : row.cell(column).map(cell -> cell.text().strip()).orElse("");
    }

    /** True for headings that are repeated further down. */
    private boolean isHeading(RawRow row) {
        return SameName.key(typed(row)).equals(SameName.key(HEADING));
    }

    /** True where something stands under another heading than that of the run. */
    private boolean holdsMore(RawRow row) {
        return row.cells().stream()
                .anyMatch(cell -> cell.column() != column
                        && !cell.isBlank()
                        && headings.place().columns().containsValue(cell.column()));
    }
}
