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
 */
record ResultBook(
        ResultStyles styles,
        ResultCells cells,
        Entries entries,
        Map<String, String> userSheets,
        Map<String, ResultSheet> tables) {}
