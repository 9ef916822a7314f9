package workuptally.tally.waste;

/**
 * What became of one solvent in one run. All masses in g; {@code charged + workup = recovered + inLayers + onCakes + inLots + notFound}.
 *
 * @param solvent name in the reference table
 * @param chargedGrams charged with the reaction, solvents inside reagents included
 * @param workupGrams added in the workup
 * @param purificationGrams added in a purification; outside this balance
 * @param recoveredGrams found in distillates
 * @param inLayersGrams dissolved in aqueous layers or standing in organic ones (estimate where not stated)
 * @param onCakesGrams held by cakes (estimate)
 * @param inLotsGrams in crude lots by their assays
 * @param notFoundGrams the rest: air, pump, glassware
 * @param densityGramsPerMillilitre density used for litres
 */
public record SolventUse(
        String solvent,
        double chargedGrams,
        double workupGrams,
        double purificationGrams,
        double recoveredGrams,
        double inLayersGrams,
        double onCakesGrams,
        double inLotsGrams,
        double notFoundGrams,
        double densityGramsPerMillilitre) {
    /** Many runs use the same solvents. */
    public SolventUse {
        solvent = solvent.intern();
    }

    /** A use whose rest is what was not found. */
    static SolventUse balanced(
            String solvent,
            double chargedGrams,
            double workupGrams,
            double purificationGrams,
            double recoveredGrams,
            double inLayersGrams,
            double onCakesGrams,
            double inLotsGrams,
            double densityGramsPerMillilitre) {
        return new SolventUse(
                solvent,
                chargedGrams,
                workupGrams,
                purificationGrams,
                recoveredGrams,
                inLayersGrams,
                onCakesGrams,
                inLotsGrams,
                chargedGrams + workupGrams - recoveredGrams - inLayersGrams - onCakesGrams - inLotsGrams,
                densityGramsPerMillilitre);
    }

    /** Both together; of the same solvent. */
    public SolventUse plus(SolventUse other) {
        return new SolventUse(
                solvent,
                chargedGrams + other.chargedGrams,
                workupGrams + other.workupGrams,
                purificationGrams + other.purificationGrams,
                recoveredGrams + other.recoveredGrams,
                inLayersGrams + other.inLayersGrams,
                onCakesGrams + other.onCakesGrams,
                inLotsGrams + other.inLotsGrams,
                notFoundGrams + other.notFoundGrams,
                densityGramsPerMillilitre);
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
