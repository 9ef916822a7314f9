package workuptally.judgement.totals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Run.Status;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.CompetingProducts;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.ProductYield.PercentOf;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.waste.Metrics;
import workuptally.tally.waste.SolventUse;
import workuptally.tally.waste.WasteLine;

/**
 * What one run adds to the totals of a period, as plain numbers, so that a thousand books need no more memory than their sums.
 *
 * @param run run id
 * @param date day of the run, if readable
 * @param status how far it is
 * @param yieldPercents product yields that can be stated, %
 * @param foundMillimoles Σ n found over those products, mmol
 * @param theoryMillimoles Σ n theory over those products, of those that compete for one partner once, mmol
 * @param leftOut what was left out of the yields, with the reason
 * @param solvents its solvents; none of a planned run
 * @param waste its layers in the waste account
 * @param masses its mass metrics, where a yield can be stated
 */
public record RunShare(
        String run,
        Optional<LocalDate> date,
        Status status,
        List<Double> yieldPercents,
        double foundMillimoles,
        double theoryMillimoles,
        List<LeftOut> leftOut,
        List<SolventUse> solvents,
        List<WasteLine> waste,
        Optional<Masses> masses) {
    /** Copies the lists. */
    public RunShare {
        yieldPercents = List.copyOf(yieldPercents);
        leftOut = List.copyOf(leftOut);
        solvents = List.copyOf(solvents);
        waste = List.copyOf(waste);
    }

    /** What was left out, each with its reason, as text. */
    public List<String> excluded() {
        return leftOut.stream().map(l -> l.what() + ": " + l.because()).toList();
    }

    /**
     * A run, or one of its products, that no yield is stated of.
     *
     * @param what run id, and product where only that is left out
     * @param because why
     */
    public record LeftOut(String what, String because) {}

    /**
     * Masses of the metrics.
     *
     * @param inGrams everything put in, g
     * @param productGrams pure product, g
     * @param solventGrams organic solvents put in, g
     * @param waterGrams water put in, g
     * @param reusedGrams set aside to be re-used, g
     * @param pmi process mass intensity of the run, g/g
     */
    public record Masses(
            double inGrams,
            double productGrams,
            double solventGrams,
            double waterGrams,
            double reusedGrams,
            double pmi) {
        static Masses of(Metrics metrics) {
            return new Masses(
                    metrics.inGrams().value(),
                    metrics.productGrams().value(),
                    metrics.solventGrams().value(),
                    metrics.waterGrams().value(),
                    metrics.reusedGrams(),
                    metrics.pmi().value());
        }
    }

    /**
     * The share of a run. A yield above 100 % by more than its uncertainty, an upper bound, a recovery of a separation and a run without a
     * yield are left out and named; nothing left out counts as zero.
     */
    public static RunShare of(RunTally tally, Limits limits) {
        List<LeftOut> leftOut = new ArrayList<>();
        List<ProductYield> statable = statable(tally, limits, leftOut);
        List<List<ProductTheory>> groups = tally.theory().stream()
                .flatMap(t -> CompetingProducts.of(tally.run(), tally.amounts(), t).stream())
                .toList();
        double found = 0;
        double expected = 0;
        for (List<ProductTheory> competing : groups) {
            double theory = 0;
            double share = 0;
            for (ProductTheory product : competing) {
                Optional<ProductYield> stated = statable.stream()
                        .filter(y -> y.product() == product.product())
                        .findFirst();
                if (stated.isPresent()) {
                    share += stated.get().percent().value() / 100;
                    theory = Math.max(theory, product.amountMillimoles().value());
                }
            }
            found += theory * share;
            expected += theory;
        }
        boolean planned = tally.run().status() == Status.PLANNED;
        return new RunShare(
                tally.run().id(),
                tally.run().head().date(),
                tally.run().status(),
                statable.stream().map(y -> y.percent().value()).toList(),
                found,
                expected,
                leftOut,
                planned ? List.of() : tally.solvents(),
                tally.waste(),
                statable.isEmpty() ? Optional.empty() : tally.metrics().map(Masses::of));
    }

    private static List<ProductYield> statable(RunTally tally, Limits limits, List<LeftOut> leftOut) {
        Run run = tally.run();
        List<ProductYield> reported =
                tally.yields().stream().filter(ProductYield::headline).toList();
        if (run.status() == Status.PLANNED) {
            leftOut.add(new LeftOut(run.id(), "planned"));
        } else if (run.status() == Status.FAILED) {
            leftOut.add(new LeftOut(run.id(), "failed"));
            return List.of();
        } else if (run.kind() == Run.Kind.SEPARATION) {
            leftOut.add(new LeftOut(run.id(), "a separation, recovery instead of yield"));
            return List.of();
        } else if (reported.isEmpty()) {
            leftOut.add(new LeftOut(run.id(), "no yield computed"));
        }
        List<ProductYield> statable = new ArrayList<>();
        for (ProductYield product : reported) {
            if (product.percentOf() != PercentOf.THEORY) {
                continue;
            }
            if (product.isAboveAll(limits.value(Limit.COVERAGE_FACTOR))) {
                leftOut.add(new LeftOut(run.id() + " " + product.product().name(), "above 100 %"));
            } else if (product.basis().isUpperBound()) {
                leftOut.add(new LeftOut(
                        run.id() + " " + product.product().name(),
                        product.basis().word()));
            } else {
                statable.add(product);
            }
        }
        return statable;
    }
}
