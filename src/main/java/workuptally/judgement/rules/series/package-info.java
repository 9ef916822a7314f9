/**
 * Rules about the book as a whole: repeated preparations, copied and corrected records. One class a rule; no rule reads another.
 */
package workuptally.judgement.rules.series;
