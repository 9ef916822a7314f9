/**
 * The review as JSON: every result with its unit, uncertainty and origin, and every finding, for other programs to read.
 *
 * <p>Start with {@link workuptally.report.json.JsonReport}. A quantity is a number in the unit its name ends with, unrounded; an expanded
 * uncertainty U = k·u has the name of its quantity behind {@code expandedUncertainty}; what was not computed is absent and stands in
 * {@code notComputed} with the reason. The shape is written down in {@code reference/review.schema.json}, that of a period in {@code reference/period.schema.json}. The package computes nothing
 * and knows no other renderer.
 */
package workuptally.report.json;
