/** The tables of a review, one class each, in the order of the workbook. Start with {@link workuptally.report.view.sheets.ReviewTables}. */
package workuptally.report.view.sheets;
