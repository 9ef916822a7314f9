/**
 * What the results mean: findings, hazard notes and, for each layer, whether the evidence is complete.
 *
 * <p>Start with {@link workuptally.judgement.Review}. One class per rule; a rule reads results and returns findings, and no rule reads
 * another. The package knows neither files nor reports.
 */
package workuptally.judgement;
