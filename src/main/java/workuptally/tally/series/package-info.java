/**
 * Repeated preparations over all runs of a book. Start with {@link workuptally.tally.series.SeriesAccount}.
 */
package workuptally.tally.series;
