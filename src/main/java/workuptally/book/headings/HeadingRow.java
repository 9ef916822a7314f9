package workuptally.book.headings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.book.files.RawCell;
import workuptally.book.files.RawRow;
import workuptally.book.files.RawTable;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.schema.Table;
import workuptally.book.words.BookWords;
import workuptally.model.Place;
import workuptally.model.RowPlace;
import workuptally.model.TablePlace;

/**
 * A row that may be that of the headings.
 *
 * @param first the first cell for each column of the form, in the order of the row
 * @param repeated a second cell for the same column
 */
record HeadingRow(RawRow row, Map<SchemaColumn, Typed> first, Map<SchemaColumn, Typed> repeated) {
    /**
     * A typed heading.
     *
     * @param heading the form's heading for it with the unit as typed, where the laboratory has its own; else what was typed
     */
    record Typed(RawCell cell, String heading) {}

    /** A row as one of headings of a table. */
    static HeadingRow of(RawRow row, Table table, HeadingAliases aliases) {
        HeadingRow candidate = new HeadingRow(row, new LinkedHashMap<>(), new LinkedHashMap<>());
        for (RawCell cell : row.cells()) {
            if (cell.type() == RawCell.Type.TEXT && !cell.isBlank()) {
                Typed typed = new Typed(cell, ownHeading(table, cell.text(), aliases));
                columnOf(table, typed.heading()).ifPresent(column -> candidate.add(column, typed));
            }
        }
        return candidate;
    }

    /** Takes a cell for a column of the form. */
    void add(SchemaColumn column, Typed typed) {
        (first.containsKey(column) ? repeated : first).putIfAbsent(column, typed);
    }

    /** The last column that holds anything, from 0. */
    int lastColumn() {
        return row.cells().get(row.cells().size() - 1).column();
    }

    /** True where all of these headings stand in the row. */
    boolean holds(List<String> keyHeadings) {
        return first.keySet().stream().map(SchemaColumn::heading).toList().containsAll(keyHeadings);
    }

    private static Optional<SchemaColumn> columnOf(Table table, String heading) {
        return table.column(BookWords.loose(heading))
                .or(() -> table.column(HeadingText.of(heading).name()));
    }

    /** The form's heading for a typed one, tried whole and then without its unit, which is kept. */
    private static String ownHeading(Table table, String typed, HeadingAliases aliases) {
        if (!aliases.renames(table)) {
            return typed;
        }
        String whole = aliases.heading(table, typed);
        if (!whole.equals(typed)) {
            return whole;
        }
        HeadingText parts = HeadingText.of(typed);
        String bare = aliases.heading(table, parts.name());
        return bare.equals(parts.name()) || parts.unitText().isEmpty() ? typed : bare + " (" + parts.unitText() + ")";
    }

    /** Where a cell of the row stands. */
    Place place(RawTable raw, RawCell cell) {
        TablePlace one = new TablePlace(
                raw.file(), raw.sheet(), raw.spreadsheet(), Map.of(BookWords.tidy(cell.text()), cell.column()));
        return new RowPlace(one, row.row(), row.line()).at(BookWords.tidy(cell.text()));
    }
}
