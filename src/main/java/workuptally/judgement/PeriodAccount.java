package workuptally.judgement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.PeriodTotals.StreamTotal;
import workuptally.measure.MeasuredValue;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Run.Status;
import workuptally.tally.ProductYield;
import workuptally.tally.ProductYield.PercentOf;
import workuptally.tally.ProductYield.Stage;
import workuptally.tally.RunTally;
import workuptally.tally.SolventUse;
import workuptally.tally.Theory.ProductTheory;
import workuptally.tally.WasteLine;

/**
 * Totals over a book: yields that can be stated, solvents, waste. A yield above 100 % by more than its uncertainty, an upper bound, a
 * recovery of a separation and a run without a yield are left out and named; nothing left out counts as zero.
 */
final class PeriodAccount {
    private final Limits limits;

    PeriodAccount(Limits limits) {
        this.limits = limits;
    }

    PeriodTotals of(List<RunReview> runs) {
        List<String> excluded = new ArrayList<>();
        List<Double> yields = new ArrayList<>();
        double found = 0;
        double expected = 0;
        for (RunReview run : runs) {
            RunTally tally = run.tally();
            for (ProductYield product : statable(tally, excluded)) {
                yields.add(product.percent().value());
                double theory = theoryMillimoles(tally, product)
                        .map(MeasuredValue::value)
                        .orElse(0.0);
                found += theory * product.percent().value() / 100;
                expected += theory;
            }
        }
        List<Double> sorted = yields.stream().sorted().toList();
        return new PeriodTotals(
                limits.value(Limit.COVERAGE_FACTOR),
                count(runs, Status.ISOLATED),
                count(runs, Status.IN_WORKUP),
                count(runs, Status.PLANNED),
                yields.size(),
                yields.stream().mapToDouble(Double::doubleValue).average(),
                median(sorted),
                expected == 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * found / expected),
                excluded,
                solvents(runs),
                waste(runs));
    }

    private List<ProductYield> statable(RunTally tally, List<String> excluded) {
        Run run = tally.run();
        List<ProductYield> workup =
                tally.yields().stream().filter(y -> y.stage() == Stage.WORKUP).toList();
        if (run.status() == Status.PLANNED) {
            excluded.add(run.id() + ": planned");
        } else if (run.kind() == Run.Kind.SEPARATION) {
            excluded.add(run.id() + ": a separation, recovery instead of yield");
            return List.of();
        } else if (workup.isEmpty()) {
            excluded.add(run.id() + ": no yield computed");
        }
        List<ProductYield> statable = new ArrayList<>();
        for (ProductYield product : workup) {
            double expanded = product.percent().expandedUncertainty(limits.value(Limit.COVERAGE_FACTOR));
            if (product.percentOf() != PercentOf.THEORY) {
                continue;
            }
            if (product.percent().value() > 100 + expanded) {
                excluded.add(run.id() + " " + product.product().name() + ": above 100 %");
            } else if (product.basis().isUpperBound()) {
                excluded.add(run.id() + " " + product.product().name() + ": "
                        + product.basis().word());
            } else {
                statable.add(product);
            }
        }
        return statable;
    }

    private static Optional<MeasuredValue> theoryMillimoles(RunTally tally, ProductYield product) {
        return tally.theory()
                .flatMap(t -> t.products().stream()
                        .filter(p -> p.product().equals(product.product()))
                        .map(ProductTheory::amountMillimoles)
                        .findFirst());
    }

    private static int count(List<RunReview> runs, Status status) {
        return (int)
                runs.stream().filter(r -> r.tally().run().status() == status).count();
    }

    private static OptionalDouble median(List<Double> sorted) {
        int n = sorted.size();
        if (n == 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of((sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2);
    }

    private static List<SolventUse> solvents(List<RunReview> runs) {
        Map<String, SolventUse> sums = new LinkedHashMap<>();
        for (RunReview run : runs) {
            if (run.tally().run().status() != Status.PLANNED) {
                run.tally().solvents().forEach(s -> sums.merge(s.solvent(), s, SolventUse::plus));
            }
        }
        return List.copyOf(sums.values());
    }

    private static List<StreamTotal> waste(List<RunReview> runs) {
        Map<String, StreamTotal> sums = new LinkedHashMap<>();
        for (RunReview run : runs) {
            for (WasteLine line : run.tally().waste()) {
                if (line.kept()) {
                    sums.merge(
                            line.stream(),
                            new StreamTotal(line.stream(), line.streamName(), 1, line.massGrams()),
                            (a, b) -> new StreamTotal(
                                    a.stream(),
                                    a.streamName(),
                                    a.layers() + b.layers(),
                                    a.massGrams() + b.massGrams()));
                }
            }
        }
        return List.copyOf(sums.values());
    }
}
