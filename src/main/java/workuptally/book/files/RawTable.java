package workuptally.book.files;

import java.util.List;

/**
 * A table as the file stores it.
 *
 * @param file file name without folders
 * @param sheet sheet name as in the book
 * @param spreadsheet true for a workbook, false for CSV
 * @param rows rows that exist, by rising row number
 * @param mergedRegions regions of merged cells
 * @param hiddenRows number of hidden rows that hold something
 * @param struckRows numbers of rows that are struck out as a whole, which are not among the rows
 */
public record RawTable(
        String file,
        String sheet,
        boolean spreadsheet,
        List<RawRow> rows,
        List<MergedRegion> mergedRegions,
        int hiddenRows,
        List<Integer> struckRows) {

    /** A table of which no row is hidden or struck out. */
    public RawTable(String file, String sheet, boolean spreadsheet, List<RawRow> rows) {
        this(file, sheet, spreadsheet, rows, List.of(), 0, List.of());
    }

    /**
     * Cells that were merged into one.
     *
     * @param firstRow first row from 1
     * @param lastRow last row
     * @param firstColumn first column from 0
     * @param lastColumn last column
     */
    public record MergedRegion(int firstRow, int lastRow, int firstColumn, int lastColumn) {
        public boolean covers(int row, int column) {
            return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
        }
    }
}
