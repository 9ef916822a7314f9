package workuptally.model;

/**
 * A row of a run that could not be read and was left out; it was reported where it stands. What it says is not known, so that no figure may
 * stand, and no layer go, as if it were not there.
 *
 * @param of what the row records
 * @param label label of the lot, sample or layer as it stands in the row; empty where the row has none
 * @param row its row
 */
public record LeftOutRow(Of of, String label, RowPlace row) {

    /** The row as a reader looks for it, {@code row 3 of Isolated}, or {@code line 3 of isolated.csv}. */
    public String inWords() {
        return row.table().spreadsheet()
                ? "row " + row.row() + " of " + row.table().sheet()
                : "line " + row.line() + " of " + row.table().file();
    }

    /** What a row records. */
    public enum Of {
        PRODUCT,
        STEP,
        LAYER,
        ASSAY,
        LOT
    }
}
