/**
 * The ledgers as comma-separated text: solvents and waste, for whoever adds them up elsewhere.
 *
 * <p>Start with {@link workuptally.report.csv.CsvLedgers}. The package writes finished views and knows no other renderer.
 */
package workuptally.report.csv;
