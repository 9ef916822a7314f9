/**
 * Each figure of a run as its equation, the numbers put in with their places in the book, the result and its uncertainty budget, so that a
 * sceptical reader can redo it on paper.
 *
 * <p>Start with {@link workuptally.report.explain.ExplainedRun}; one class for each kind of figure. It takes finished results apart and
 * computes no result of its own; it knows no other report and no terminal.
 */
package workuptally.report.explain;
