/**
 * What happens at the bench: contacts, reactions at a step, drying, re-extraction, and the plan, which also foretells waste. Start with {@link workuptally.tally.bench.ContactAccount}.
 */
package workuptally.tally.bench;
