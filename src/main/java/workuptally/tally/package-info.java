/**
 * What the entries add up to: amounts and theory, yields, layers and their contents, closure, mass balance, solvents and waste of each run.
 *
 * <p>Start with {@link workuptally.tally.RunTally}. One class per account, in rooms that run one way:
 * {@code amounts -> layers -> balance -> waste -> bench}, then this room, which puts the accounts of a run together, and above it
 * {@code containers} and {@code series} over all runs. (The plan stands at the bench and foretells waste, so waste comes before it.)
 * The package reads {@code model} and the leaves
 * {@code measure}, {@code chemistry} and {@code reference}; it knows neither files nor reports, and it judges nothing.
 */
package workuptally.tally;
