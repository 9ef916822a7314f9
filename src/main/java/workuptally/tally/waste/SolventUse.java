package workuptally.tally.waste;

import java.util.Optional;

/**
 * What became of one solvent in one run. All masses in g; {@code charged + workup = recovered + inDistillates + inLayers + onCakes + inLots
 * + notFound}.
 *
 * @param solvent name in the reference table
 * @param registryNumber its registry number (CAS); empty where the table has none
 * @param chargedGrams charged with the reaction, solvents inside reagents included
 * @param workupGrams added in the workup
 * @param purification added in a purification and what became of it; outside this balance
 * @param recoveredGrams found in distillates that are to be re-used
 * @param inDistillatesGrams found in the other distillates: kept, proposed as waste, released or used up
 * @param inLayersGrams dissolved in aqueous layers or standing in organic ones (estimate where not stated)
 * @param onCakesGrams held by cakes (estimate)
 * @param inLotsGrams in crude lots by their assays, and what the reaction used up of it as a part of the product found
 * @param notFoundGrams the rest: air, pump, glassware
 * @param densityGramsPerMillilitre density used for litres
 * @param missingAmounts charges and additions of it whose amount is not known: where there are any, what was put in is a least one
 */
public record SolventUse(
        String solvent,
        Optional<String> registryNumber,
        double chargedGrams,
        double workupGrams,
        Purification purification,
        double recoveredGrams,
        double inDistillatesGrams,
        double inLayersGrams,
        double onCakesGrams,
        double inLotsGrams,
        double notFoundGrams,
        double densityGramsPerMillilitre,
        int missingAmounts) {
    private static final double LAST_DIGITS = 1e-12;

    /** Many runs use the same solvents. */
    public SolventUse {
        solvent = solvent.intern();
    }

    /** A use whose rest is what was not found. */
    static SolventUse balanced(
            String solvent,
            Optional<String> registryNumber,
            double chargedGrams,
            double workupGrams,
            Purification purification,
            double recoveredGrams,
            double inDistillatesGrams,
            double inLayersGrams,
            double onCakesGrams,
            double inLotsGrams,
            double densityGramsPerMillilitre,
            int missingAmounts) {
        return new SolventUse(
                solvent,
                registryNumber,
                chargedGrams,
                workupGrams,
                purification,
                recoveredGrams,
                inDistillatesGrams,
                inLayersGrams,
                onCakesGrams,
                inLotsGrams,
                rest(
                        chargedGrams + workupGrams,
                        recoveredGrams + inDistillatesGrams + inLayersGrams + onCakesGrams + inLotsGrams),
                densityGramsPerMillilitre,
                missingAmounts);
    }

    /** What was not found, g; none where both differ by no more than their last digits. */
    private static double rest(double inGrams, double foundGrams) {
        double rest = inGrams - foundGrams;
        return Math.abs(rest) < LAST_DIGITS * inGrams ? 0 : rest;
    }

    /** Both together; of the same solvent. */
    public SolventUse plus(SolventUse other) {
        return new SolventUse(
                solvent,
                registryNumber,
                chargedGrams + other.chargedGrams,
                workupGrams + other.workupGrams,
                purification.plus(other.purification),
                recoveredGrams + other.recoveredGrams,
                inDistillatesGrams + other.inDistillatesGrams,
                inLayersGrams + other.inLayersGrams,
                onCakesGrams + other.onCakesGrams,
                inLotsGrams + other.inLotsGrams,
                notFoundGrams + other.notFoundGrams,
                densityGramsPerMillilitre,
                missingAmounts + other.missingAmounts);
    }

    /** Added in a purification, g. */
    public double purificationGrams() {
        return purification.inGrams();
    }

    /**
     * A purification's own balance of the solvent, all in g.
     *
     * @param inGrams added
     * @param recoveredGrams found in its distillates that are to be re-used
     * @param inDistillatesGrams found in its other distillates
     * @param inLayersGrams standing in liquors, eluates and fractions (estimate where not stated)
     */
    public record Purification(double inGrams, double recoveredGrams, double inDistillatesGrams, double inLayersGrams) {
        /** The rest: air, pump, glassware, and portions without a label. */
        public double notFoundGrams() {
            return inGrams - recoveredGrams - inDistillatesGrams - inLayersGrams;
        }

        private Purification plus(Purification other) {
            return new Purification(
                    inGrams + other.inGrams,
                    recoveredGrams + other.recoveredGrams,
                    inDistillatesGrams + other.inDistillatesGrams,
                    inLayersGrams + other.inLayersGrams);
        }
    }

    /** Mass put in, g. */
    public double inGrams() {
        return chargedGrams + workupGrams;
    }

    /** Volume put in, L, purification not included. */
    public double inLitres() {
        return inGrams() / densityGramsPerMillilitre / 1000;
    }
}
