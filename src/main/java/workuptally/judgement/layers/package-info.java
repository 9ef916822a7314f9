/**
 * Conditions R1 to R12 on the evidence about a kept layer, one class each, and the decision they amount to.
 *
 * <p>Start with {@link workuptally.judgement.layers.LayerDeciding}. Nothing here lets a layer go: an outcome says what the record supports,
 * and a person decides under the local rules.
 */
package workuptally.judgement.layers;
