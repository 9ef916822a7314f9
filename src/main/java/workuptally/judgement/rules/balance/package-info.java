/**
 * Rules about weighings, assays, yields and balances. One class a rule; no rule reads another.
 */
package workuptally.judgement.rules.balance;
