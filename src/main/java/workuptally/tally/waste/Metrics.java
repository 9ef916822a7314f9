package workuptally.tally.waste;

import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;

/**
 * Mass metrics of one run, ending at the crude or the dried solid; what a purification takes in is outside. They say nothing about hazard or energy and
 * compare only at equal boundary.
 *
 * <p>PMI = Σm(in)/m(P). E = (Σm(in) − m(P) − m(re-used))/m(P). Reaction mass efficiency = m(P)/Σm(reactants). Definitions: Constable,
 * Curzons, Cunningham, Green Chem. 2002, 4, 521 (from memory); E-factor after Sheldon (from memory).
 *
 * @param inGrams everything that went into reaction and workup, water and drying agent included, g
 * @param workupInGrams the part of it added from the quench on, else from the first step on, g
 * @param productGrams wanted products by assay, g, above 0
 * @param ofPurified true where the crude of a wanted product has no assay and what was purified from it is taken: the loss of the
 *     purification then makes every figure per mass of product larger
 * @param solventGrams organic solvents: charges with that role, the solvent of solutions, and workup liquids, g
 * @param waterGrams water charged, added, and in aqueous reagents, g
 * @param reusedGrams distillates and layers set aside to be re-used, g
 * @param reusedWaterGrams water in those, by their composition, g
 * @param reactantGrams charges with a coefficient, of a solution the reagent's mass alone, g; empty for a separation
 * @param atomEconomyPercent Σν(P)M(P)/ΣνM over the charges with a coefficient, %; empty where a molar mass is missing or for a separation
 */
public record Metrics(
        MeasuredValue inGrams,
        MeasuredValue workupInGrams,
        MeasuredValue productGrams,
        boolean ofPurified,
        MeasuredValue solventGrams,
        MeasuredValue waterGrams,
        double reusedGrams,
        double reusedWaterGrams,
        Optional<MeasuredValue> reactantGrams,
        OptionalDouble atomEconomyPercent) {

    /** Process mass intensity Σm(in)/m(P), g/g, water in. */
    public MeasuredValue pmi() {
        return inGrams.over(productGrams);
    }

    /** What the workup alone put in per mass of product, g/g, water in. */
    public MeasuredValue pmiWorkupOnly() {
        return workupInGrams.over(productGrams);
    }

    /** E-factor with water counted; PMI − 1 where nothing is re-used. */
    public double eFactorWithWater() {
        return (inGrams.value() - productGrams.value() - reusedGrams) / productGrams.value();
    }

    /** E-factor with water left out on both sides. */
    public double eFactorWithoutWater() {
        return (inGrams.value() - waterGrams.value() - productGrams.value() - (reusedGrams - reusedWaterGrams))
                / productGrams.value();
    }

    /** Reaction mass efficiency, %. */
    public Optional<MeasuredValue> reactionMassEfficiencyPercent() {
        return reactantGrams.map(reactants -> productGrams.over(reactants).times(100));
    }

    /** Organic solvent per mass of product, g/g. */
    public MeasuredValue solventIntensity() {
        return solventGrams.over(productGrams);
    }

    /** Water per mass of product, g/g. */
    public MeasuredValue waterIntensity() {
        return waterGrams.over(productGrams);
    }

    /**
     * Atom economy, %.
     *
     * @param productGramsPerMole Σν·M of the products, g/mol
     * @param reactantsGramsPerMole Σν·M of the reactants, g/mol, above 0
     */
    public static double atomEconomyPercent(double productGramsPerMole, double reactantsGramsPerMole) {
        return 100 * productGramsPerMole / reactantsGramsPerMole;
    }
}
