/**
 * Rules about what was charged: molar masses, forms, assays, titres, amounts, the limiting reagent. One class a rule; no rule reads another.
 */
package workuptally.judgement.rules.charges;
