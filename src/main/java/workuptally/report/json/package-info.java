/**
 * The review as JSON: every result with its unit, uncertainty and origin, and every finding, for other programs to read.
 *
 * <p>Start with {@link workuptally.report.json.JsonReport}. A quantity is a number in the unit its name ends with, with
 * more digits than it is worth; an expanded uncertainty U = k·u has the name of its quantity behind {@code expandedUncertainty}; what was not
 * computed is absent and stands in {@code notComputed} with the reason. What many runs share stands once in front of them
 * ({@link workuptally.report.json.SaidOnce}), names of small records once in {@code columns} ({@link workuptally.report.json.Rows}). The
 * shape is written down in {@code reference/review.schema.json}, that of a period in {@code reference/period.schema.json}. The package
 * computes nothing and knows no other renderer.
 */
package workuptally.report.json;
