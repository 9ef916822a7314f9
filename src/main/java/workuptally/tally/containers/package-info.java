/**
 * Ledgers of waste containers over all runs of a book. Start with {@link workuptally.tally.containers.ContainerAccount}.
 */
package workuptally.tally.containers;
