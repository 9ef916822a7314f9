package workuptally.reference.substances;

/**
 * A solvent in a mixture made up by volume.
 *
 * @param solvent the solvent
 * @param volumeFraction its share of the volumes before mixing, above 0 and up to 1
 */
public record SolventShare(Solvent solvent, double volumeFraction) {}
