package workuptally.tally.layers;

/**
 * A solvent of which the stated compositions of the distillates of a step and what went into the step tell different things.
 *
 * @param solvent full name
 * @param statedGrams mass in the distillates by their compositions, g
 * @param takenGrams mass that the step took, estimated, g
 */
public record SolventMismatch(String solvent, double statedGrams, double takenGrams) {
    /** True where no composition names it; else more of it is stated than there was. */
    public boolean isLeftOut() {
        return statedGrams == 0;
    }
}
