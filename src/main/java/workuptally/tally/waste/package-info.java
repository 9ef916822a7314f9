/**
 * Solvents, streams and mass metrics of a run. Start with {@link workuptally.tally.waste.SolventAccount}.
 */
package workuptally.tally.waste;
