/**
 * The rules: one small class for each suspicion, reading results and returning findings.
 *
 * <p>Start with {@link workuptally.judgement.rules.Rules}, the one ordered list. No rule reads another; each code has a section in
 * {@code reference/findings.md}. The package knows neither files nor reports.
 */
package workuptally.judgement.rules;
