package workuptally.model;

/**
 * One row of a table.
 *
 * @param table the table
 * @param row row in the sheet, from 1
 * @param line line of the file for CSV; equal to {@code row} for a workbook
 */
public record RowPlace(TablePlace table, int row, int line) {
    /** The place of the entry under a heading of the schema, for example {@code Gross}. */
    public Place at(String heading) {
        return table.at(row, line, heading);
    }
}
