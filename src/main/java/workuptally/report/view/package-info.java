/**
 * What the reports say, as plain tables: columns with unit and decimals, rows, marks. Workbook and CSV draw them; none computes.
 *
 * <p>Start with {@link workuptally.report.view.TableView}.
 */
package workuptally.report.view;
