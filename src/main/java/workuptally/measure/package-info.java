/**
 * Measured values: a number, its standard uncertainty, and the entered readings it depends on.
 *
 * <p>Start with {@link workuptally.measure.Readings}, which enters a reading, and {@link workuptally.measure.MeasuredValue}, which
 * is computed with. The package knows no chemistry, no book and no report.
 */
package workuptally.measure;
