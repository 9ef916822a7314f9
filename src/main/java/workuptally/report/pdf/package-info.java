/**
 * The printed documents: review, safety, labels, bench sheet, period.
 *
 * <p>Start with {@link workuptally.report.pdf.PdfReport}. Sections ({@code FirstPage}, {@code RunBlocks} …) turn results into blocks of
 * {@code layout}, pictures stand in {@code pictures}. The package computes nothing but layout and rounding and knows no other report.
 */
package workuptally.report.pdf;
