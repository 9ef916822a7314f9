/**
 * Rules about what happens in the funnel: quench, gas, capacity of washes, fill. One class a rule; no rule reads another.
 */
package workuptally.judgement.rules.quench;
