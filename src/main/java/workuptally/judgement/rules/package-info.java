/**
 * The rules: one small class for each suspicion, reading results and returning findings, in rooms by subject.
 *
 * <p>The one ordered list is {@code judgement.Rules}. No rule reads another; each code has a section in {@code reference/findings.md}.
 * This room holds what a rule is and how its findings are collected. The package knows neither files nor reports.
 */
package workuptally.judgement.rules;
