/**
 * Rules about layers, the steps that give them, and what they hold. One class a rule; no rule reads another.
 */
package workuptally.judgement.rules.layers;
