package workuptally.reference.tables;

import java.util.List;

/**
 * A reference table as text, for showing.
 *
 * @param name name of the table, for example {@code solvents}
 * @param notes comment lines at the head of the file: what, units, conditions
 * @param columns headings, with the unit in parentheses
 * @param rows cells as written, in order of the columns; {@code -} = not known or does not apply
 */
public record ReferenceTable(String name, List<String> notes, List<String> columns, List<List<String>> rows) {
    /** Copies the lists. */
    public ReferenceTable {
        notes = List.copyOf(notes);
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
