package workuptally.tally.layers;

/**
 * A solvent of which the stated compositions of the distillates of a step and what went in tell different things.
 *
 * @param solvent full name
 * @param statedGrams mass in the distillates by their compositions, g
 * @param wentInGrams mass that went into the run, or that the step took where it is left out, g
 */
public record SolventMismatch(String solvent, double statedGrams, double wentInGrams) {
    /** True where no composition names it; else more of it is stated than there was. */
    public boolean isLeftOut() {
        return statedGrams == 0;
    }
}
