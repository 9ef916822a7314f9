package workuptally.judgement.totals;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Mass metrics over the runs whose yield can be stated: sum over sum. The mean over runs stands beside and is not the period's.
 *
 * @param runs ids of the runs that count
 * @param inGrams Σm(in), g
 * @param productGrams Σm(P), g
 * @param solventGrams organic solvents put in, g
 * @param waterGrams water put in, g
 * @param reusedGrams set aside to be re-used, g
 * @param meanOfPmis arithmetic mean of the runs' PMI, g/g; not to be reported as the period's
 */
public record PeriodMetrics(
        List<String> runs,
        double inGrams,
        double productGrams,
        double solventGrams,
        double waterGrams,
        double reusedGrams,
        OptionalDouble meanOfPmis) {
    /** Of no run. */
    public static final PeriodMetrics NONE = new PeriodMetrics(List.of(), 0, 0, 0, 0, 0, OptionalDouble.empty());

    /** Copies the list. */
    public PeriodMetrics {
        runs = List.copyOf(runs);
    }

    /** Process mass intensity of the period Σm(in)/Σm(P), g/g; empty without a run that counts. */
    public OptionalDouble pmi() {
        return perProduct(inGrams);
    }

    /** E-factor with water counted, g/g. */
    public OptionalDouble eFactorWithWater() {
        return perProduct(inGrams - productGrams - reusedGrams);
    }

    /** Organic solvent per mass of product, g/g. */
    public OptionalDouble solventIntensity() {
        return perProduct(solventGrams);
    }

    /** Water per mass of product, g/g. */
    public OptionalDouble waterIntensity() {
        return perProduct(waterGrams);
    }

    private OptionalDouble perProduct(double grams) {
        return productGrams > 0 ? OptionalDouble.of(grams / productGrams) : OptionalDouble.empty();
    }
}
