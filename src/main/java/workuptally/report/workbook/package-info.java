/**
 * The annotated workbook: the user's own book with marks, comments and result sheets.
 *
 * <p>Start with {@link workuptally.report.workbook.AnnotatedWorkbook}. The user's sheets are carried over as text: a spreadsheet
 * library sees them only with their cells taken out, adds styles, comments and result sheets without their rows, and the original sheets
 * are then copied in again, changed in nothing but the style numbers of marked cells; the rows of the result sheets are made, written
 * and forgotten one after the other. The package renders finished views; it computes nothing and
 * knows no other renderer.
 */
package workuptally.report.workbook;
