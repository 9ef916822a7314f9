/** The tables that are kept and added to beyond one review: runs, solvents, waste, containers. Start with {@link workuptally.report.view.ledgers.Ledgers}. */
package workuptally.report.view.ledgers;
