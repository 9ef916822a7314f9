/**
 * Accounts over many books: what each book adds, and the totals of a period with those before it. Start at {@link
 * workuptally.judgement.period.PeriodLedger}. It knows neither files nor reports.
 */
package workuptally.judgement.period;
