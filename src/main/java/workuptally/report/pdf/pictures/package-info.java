/**
 * Pictures of a report, one message each: layer map, strips, bars, charts. A picture draws into a {@link workuptally.report.pdf.layout.TaggedPicture}, which carries its alternative text.
 */
package workuptally.report.pdf.pictures;
