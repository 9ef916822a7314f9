/**
 * What the reports say: facts selected, rounded and worded once. Workbook, PDF, JSON, CSV and terminal draw them; none computes.
 *
 * <p>Rooms run one way: wording, then tables and lines, then firstpage, sheets, ledgers; labels rest on wording alone.
 */
package workuptally.report.view;
