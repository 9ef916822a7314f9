package workuptally.model;

import java.util.Map;

/**
 * One table of the book: where it stands and which column each heading has.
 *
 * @param file file name without folders
 * @param sheet sheet name as in the book
 * @param spreadsheet true for a workbook, whose places are cells; false for CSV, whose places are lines and headings
 * @param columns column number, from 0, by heading of the schema ({@code Gross}, without unit); -1 for what stands in no cell but holds
 *     for all rows
 * @param ownHeadings the laboratory's own heading by heading of the schema, where it has a list of its own; else empty
 */
public record TablePlace(
        String file, String sheet, boolean spreadsheet, Map<String, Integer> columns, Map<String, String> ownHeadings) {
    /** Copies the maps. */
    public TablePlace {
        columns = Map.copyOf(columns);
        ownHeadings = Map.copyOf(ownHeadings);
    }

    /** A table with the headings of the schema. */
    public TablePlace(String file, String sheet, boolean spreadsheet, Map<String, Integer> columns) {
        this(file, sheet, spreadsheet, columns, Map.of());
    }

    /**
     * The place of an entry.
     *
     * @param row row from 1, in CSV the row that the record has when the table is shown as a sheet
     * @param line line of the file for CSV; the row for a workbook
     * @param heading heading of the schema; a heading that the table lacks gives the place of the row's first cell
     */
    Place at(int row, int line, String heading) {
        int column = columns.getOrDefault(heading, 0);
        return spreadsheet
                ? Place.ofCell(file, sheet, row, column)
                : new Place(
                        file, sheet, row, column, "line " + line + ", " + ownHeadings.getOrDefault(heading, heading));
    }

    /** Letters of a column counted from 0: 0 is {@code A}, 26 is {@code AA}. */
    public static String columnLetters(int column) {
        String letters = "";
        for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
            letters = (char) ('A' + rest % 26) + letters;
        }
        return letters;
    }
}
