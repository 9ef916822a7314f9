/**
 * The printed review: a page for the supervisor, a block per run, the account for safety staff, the basis.
 *
 * <p>Start with {@link workuptally.report.pdf.PdfReport}. Sections ({@code SupervisorPage}, {@code RunBlock}, …) turn results into
 * blocks; blocks ({@code Heading}, {@code Paragraph}, {@code TaggedTable}, {@code Figure}) know their height and draw themselves,
 * tagged, on a {@code PageFlow}. The package computes nothing but layout and rounding and knows no other report.
 */
package workuptally.report.pdf;
