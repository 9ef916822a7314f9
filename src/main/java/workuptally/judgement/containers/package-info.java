/**
 * What the ledgers of waste containers say about each proposed transfer: stream, materials that must not meet, fill. Start at {@link
 * workuptally.judgement.containers.ContainerReviewing}. Findings about it are rules of the package above, which this one does not know;
 * nor does it know reports.
 */
package workuptally.judgement.containers;
