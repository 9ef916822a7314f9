/**
 * What the entries add up to: amounts and theory, yields, layers and their contents, closure, mass balance, solvents and waste of each run.
 *
 * <p>Start with {@link workuptally.tally.RunTally}. One class per account. The package reads {@code model} and the leaves
 * {@code measure}, {@code chemistry} and {@code reference}; it knows neither files nor reports, and it judges nothing.
 */
package workuptally.tally;
