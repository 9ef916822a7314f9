/**
 * The steps as a graph and what flows along it: layers, their identity, contents and make-up. Start with {@link workuptally.tally.layers.LayerGraph}, then {@link workuptally.tally.layers.LayerFlow}. Knows no balance.
 */
package workuptally.tally.layers;
