/**
 * Sums and metrics over the runs of one book. Start with {@link workuptally.judgement.totals.PeriodAccount}.
 */
package workuptally.judgement.totals;
