package workuptally.book.lists;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import workuptally.book.cells.CellNumber;
import workuptally.book.cells.NumberText;
import workuptally.book.files.FindingLog;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.tables.RowsAside;

/**
 * The cells of a laboratory's own list as several feeds read them: a text that is merged over several rows of a column, such as the solvent
 * of three runs, stands in each of them, and what is to be said of the sheet is said once.
 */
final class OwnListCells {
    /** Regions above which a table is refused, so that looking at each of them costs no time here. */
    private static final int MOST_MERGED = 1_000;

    private OwnListCells() {}

    static RawTable of(RawTable raw, OwnListHeader header, FindingLog log) {
        RowsAside.report(raw, header.lastRow().row(), log);
        Map<Integer, Map<Integer, RawCell>> added = new HashMap<>();
        List<RawTable.MergedRegion> left = new ArrayList<>();
        for (RawTable.MergedRegion region : raw.mergedRegions()) {
            Optional<RawCell> text =
                    raw.mergedRegions().size() > MOST_MERGED ? Optional.empty() : text(raw, region, header);
            if (text.isEmpty()) {
                left.add(region);
            } else {
                raw.rows().stream()
                        .filter(row -> row.row() > region.firstRow() && row.row() <= region.lastRow())
                        .forEach(row -> added.computeIfAbsent(row.row(), r -> new HashMap<>())
                                .put(region.firstColumn(), text.get()));
            }
        }
        List<RawRow> rows = raw.rows().stream()
                .map(row -> with(row, added.getOrDefault(row.row(), Map.of())))
                .toList();
        return new RawTable(raw.file(), raw.sheet(), raw.spreadsheet(), rows, left, 0, List.of());
    }

    /** The cells of a list without those of columns that another list on the sheet takes. */
    static RawTable without(RawTable raw, Set<Integer> columns) {
        if (columns.isEmpty()) {
            return raw;
        }
        List<RawRow> rows = raw.rows().stream()
                .map(row -> new RawRow(
                        row.row(),
                        row.line(),
                        row.cells().stream()
                                .filter(cell -> !columns.contains(cell.column()))
                                .toList(),
                        row.width()))
                .filter(row -> !row.cells().isEmpty())
                .toList();
        return new RawTable(
                raw.file(),
                raw.sheet(),
                raw.spreadsheet(),
                rows,
                raw.mergedRegions(),
                raw.hiddenRows(),
                raw.struckRows());
    }

    /** The text of cells merged over rows of one column below the headings; nothing for a number, which cannot hold for each. */
    private static Optional<RawCell> text(RawTable raw, RawTable.MergedRegion region, OwnListHeader header) {
        if (region.firstColumn() != region.lastColumn()
                || region.firstRow() <= header.lastRow().row()) {
            return Optional.empty();
        }
        return raw.rows().stream()
                .filter(row -> row.row() == region.firstRow())
                .flatMap(row -> row.cell(region.firstColumn()).stream())
                .filter(cell ->
                        cell.type() == RawCell.Type.TEXT && !(CellNumber.read(cell) instanceof NumberText.Number))
                .findFirst();
    }

    private static RawRow with(RawRow row, Map<Integer, RawCell> added) {
        if (added.isEmpty()) {
            return row;
        }
        TreeMap<Integer, RawCell> cells = new TreeMap<>(added);
        row.cells().forEach(cell -> cells.put(cell.column(), cell));
        return new RawRow(row.row(), row.line(), List.copyOf(cells.values()), row.width());
    }
}
