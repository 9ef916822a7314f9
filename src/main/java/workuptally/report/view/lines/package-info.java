/** A finding, a container, a proposed transfer, a series or a stream in one line or bar. Start with {@link workuptally.report.view.lines.RunFindings}. */
package workuptally.report.view.lines;
