/**
 * What was found against what was charged: closures, total mass, yields, bounds of what was not assayed, routes. Start with {@link workuptally.tally.balance.ClosureAccount}.
 */
package workuptally.tally.balance;
