package workuptally.tally.bench;

import workuptally.model.Step;

/**
 * What a step that acidifies or basifies meets, and what the workup has brought against it so far.
 *
 * @param step the step
 * @param acid true where it brings acid
 * @param broughtMillimoles protons brought up to this step, or taken up by what was brought, mmol
 * @param neededMillimoles what strong base has taken, or strong acid given, at least, mmol
 */
public record Neutralisation(Step step, boolean acid, double broughtMillimoles, double neededMillimoles) {
    /** How much is brought of what is needed, %. */
    public double coveredPercent() {
        return 100 * broughtMillimoles / neededMillimoles;
    }
}
