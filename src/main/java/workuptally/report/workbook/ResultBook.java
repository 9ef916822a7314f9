package workuptally.report.workbook;

import java.util.Map;

/**
 * What the result sheets of a workbook have in common.
 *
 * @param styles their styles
 * @param cells looks and links of their cells
 * @param entries numbers in the user's sheets
 * @param userSheets names of the user's sheets by key
 * @param tables result sheets by title
 * @param names named numbers by the name that the tables use
 */
record ResultBook(
        ResultStyles styles,
        ResultCells cells,
        EnteredNumbers entries,
        Map<String, String> userSheets,
        Map<String, ResultSheet> tables,
        Map<String, Named> names) {
    /**
     * A named number.
     *
     * @param shown its name in the workbook, where the user may have taken that of the table
     * @param number the number
     */
    record Named(String shown, double number) {}
}
