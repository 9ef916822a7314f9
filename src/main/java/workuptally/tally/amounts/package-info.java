/**
 * What was charged and weighed, as amounts with uncertainty: charges, theory, molar masses, contents from assays. Start with {@link workuptally.tally.amounts.ChargeAmountAccount}. Knows no steps.
 */
package workuptally.tally.amounts;
