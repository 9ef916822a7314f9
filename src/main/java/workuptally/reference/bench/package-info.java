/** Glassware, and the figures of the trade with their ranges. Start with {@link workuptally.reference.bench.Threshold}. */
package workuptally.reference.bench;
