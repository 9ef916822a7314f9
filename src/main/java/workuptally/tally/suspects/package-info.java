/**
 * Which entry is wrong: what the entries of a run say against each other, and the usual slip of one cell that would settle all of it. Start
 * at {@link workuptally.tally.suspects.SuspectAccount}. Knows nothing of findings and reports.
 */
package workuptally.tally.suspects;
