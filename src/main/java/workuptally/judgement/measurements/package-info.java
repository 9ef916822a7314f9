/**
 * What to measure next: which test settles the most open layers for its cost, and what it must give. Start at
 * {@link workuptally.judgement.measurements.OpenLayers}. Knows decisions and tallies, no words of reports.
 */
package workuptally.judgement.measurements;
