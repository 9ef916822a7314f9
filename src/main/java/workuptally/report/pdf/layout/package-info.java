/**
 * Type, flow and tagged tables of a page, and the document around it; knows nothing of what it prints. Start with {@link workuptally.report.pdf.layout.PdfDocument}, then {@link workuptally.report.pdf.layout.PageFlow}: a {@link workuptally.report.pdf.layout.Block} knows its height and draws itself, tagged.
 */
package workuptally.report.pdf.layout;
