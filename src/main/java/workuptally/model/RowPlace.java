package workuptally.model;

/**
 * One row of a table.
 *
 * @param table the table
 * @param row row in the sheet, from 1
 * @param line line of the file for CSV; equal to {@code row} for a workbook
 */
public record RowPlace(TablePlace table, int row, int line) {
    /**
     * An entry of this row as its reader would look for it: {@code Formula of aniline in Charges}, or by the laboratory's own heading where it
     * has a list of its own.
     *
     * @param heading heading of the schema
     * @param of what the row is about
     * @param tableName name of the table in the form
     */
    public String entry(String heading, String of, String tableName) {
        if (table.ownHeadings().isEmpty()) {
            return heading + " of " + of + " in " + tableName;
        }
        String own = table.ownHeadings().get(heading);
        return own == null
                ? heading + " of " + of + ", in a column of " + table.sheet() + " that the headings file names"
                : "'" + own + "' of " + of + " in " + table.sheet();
    }

    /** The place of the entry under a heading of the schema, for example {@code Gross}. */
    public Place at(String heading) {
        return table.at(row, line, heading);
    }
}
