package workuptally.judgement.totals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.tally.waste.SolventUse;

/**
 * Totals over a book.
 *
 * @param coverageFactor k of every expanded uncertainty
 * @param runsIsolated runs with an isolated product
 * @param runsInWorkup runs with layers only
 * @param runsPlanned runs only planned
 * @param yieldsStated number of product yields that can be stated
 * @param meanYieldPercent arithmetic mean of those yields, %
 * @param medianYieldPercent median of those yields, %
 * @param amountWeightedYieldPercent Σ n found / Σ n theory, %
 * @param excluded what was left out of those figures, with the reason
 * @param solvents solvents over all runs
 * @param waste waste streams over all runs
 * @param withoutLargest the amount-weighted yield without the run of the largest theory; empty with fewer than two runs
 * @param metrics mass metrics
 */
public record PeriodTotals(
        double coverageFactor,
        int runsIsolated,
        int runsInWorkup,
        int runsPlanned,
        int yieldsStated,
        OptionalDouble meanYieldPercent,
        OptionalDouble medianYieldPercent,
        OptionalDouble amountWeightedYieldPercent,
        List<String> excluded,
        List<SolventUse> solvents,
        List<StreamTotal> waste,
        Optional<WithoutLargest> withoutLargest,
        PeriodMetrics metrics) {
    /** Copies the lists. */
    public PeriodTotals {
        excluded = List.copyOf(excluded);
        solvents = List.copyOf(solvents);
        waste = List.copyOf(waste);
    }

    /** Totals without mass metrics. */
    public PeriodTotals(
            double coverageFactor,
            int runsIsolated,
            int runsInWorkup,
            int runsPlanned,
            int yieldsStated,
            OptionalDouble meanYieldPercent,
            OptionalDouble medianYieldPercent,
            OptionalDouble amountWeightedYieldPercent,
            List<String> excluded,
            List<SolventUse> solvents,
            List<StreamTotal> waste) {
        this(
                coverageFactor,
                runsIsolated,
                runsInWorkup,
                runsPlanned,
                yieldsStated,
                meanYieldPercent,
                medianYieldPercent,
                amountWeightedYieldPercent,
                excluded,
                solvents,
                waste,
                Optional.empty(),
                PeriodMetrics.NONE);
    }

    /**
     * The amount-weighted yield without one run, so that a large run does not hide the small ones.
     *
     * @param run the run left out
     * @param percent Σ n found / Σ n theory of the others, %
     */
    public record WithoutLargest(String run, double percent) {}

    /** Volume of all solvents put in, L; purification not included. */
    public double solventInLitres() {
        return solvents.stream().mapToDouble(SolventUse::inLitres).sum();
    }

    /** True where an amount of a solvent is not known, so that what was put in is a least one. */
    public boolean isSolventLeast() {
        return solvents.stream().anyMatch(use -> use.missingAmounts() > 0);
    }

    /** Mass of all solvents put in, g; purification not included. */
    public double solventInGrams() {
        return solvents.stream().mapToDouble(SolventUse::inGrams).sum();
    }

    /** Mass of all solvents added in purifications, g; none of it is in what was put in. */
    public double solventInPurificationsGrams() {
        return solvents.stream().mapToDouble(SolventUse::purificationGrams).sum();
    }

    /** Mass of all solvents found in distillates that are to be re-used, g. */
    public double solventRecoveredGrams() {
        return solvents.stream().mapToDouble(SolventUse::recoveredGrams).sum();
    }

    /** Share of the solvents put in that was found in distillates that are to be re-used, %; 0 without solvents. */
    public double solventRecoveredPercent() {
        return solventInGrams() == 0 ? 0 : 100 * solventRecoveredGrams() / solventInGrams();
    }

    /** Mass of all solvents found in the other distillates, g: kept, proposed as waste, released or used up. */
    public double solventInDistillatesGrams() {
        return solvents.stream().mapToDouble(SolventUse::inDistillatesGrams).sum();
    }

    /** Share of the solvents put in that was found in the other distillates, %; 0 without solvents. */
    public double solventInDistillatesPercent() {
        return solventInGrams() == 0 ? 0 : 100 * solventInDistillatesGrams() / solventInGrams();
    }

    /** Share of the solvents put in that was not found again, %; 0 without solvents. */
    public double solventNotFoundPercent() {
        return solventInGrams() == 0 ? 0 : 100 * solventNotFoundGrams() / solventInGrams();
    }

    /** Mass of all solvents not found again, g. */
    public double solventNotFoundGrams() {
        return solvents.stream().mapToDouble(SolventUse::notFoundGrams).sum();
    }

    /**
     * Mass of one stream.
     *
     * @param stream key in the reference data
     * @param streamName name
     * @param layers number of layers
     * @param massGrams mass of those with one, g
     * @param withoutMass layers among them whose amount is not recorded: with any, the mass is a least one
     */
    public record StreamTotal(String stream, String streamName, int layers, double massGrams, int withoutMass) {}
}
