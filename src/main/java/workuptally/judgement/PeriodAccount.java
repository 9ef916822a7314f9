package workuptally.judgement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.PeriodTotals.StreamTotal;
import workuptally.judgement.PeriodTotals.WithoutLargest;
import workuptally.measure.MeasuredValue;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.Run.Status;
import workuptally.tally.Metrics;
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
        Map<String, Double> found = new LinkedHashMap<>();
        Map<String, Double> expected = new LinkedHashMap<>();
        List<Metrics> metrics = new ArrayList<>();
        List<String> measured = new ArrayList<>();
        for (RunReview run : runs) {
            RunTally tally = run.tally();
            List<ProductYield> statable = statable(tally, excluded);
            if (!statable.isEmpty() && tally.metrics().isPresent()) {
                metrics.add(tally.metrics().get());
                measured.add(run.id());
            }
            for (ProductYield product : statable) {
                yields.add(product.percent().value());
                double theory = theoryMillimoles(tally, product)
                        .map(MeasuredValue::value)
                        .orElse(0.0);
                found.merge(run.id(), theory * product.percent().value() / 100, Double::sum);
                expected.merge(run.id(), theory, Double::sum);
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
                weighted(found, expected, ""),
                excluded,
                solvents(runs),
                waste(runs),
                withoutLargest(found, expected),
                metrics(measured, metrics));
    }

    /** Σ found / Σ theory without one run, %. */
    private static OptionalDouble weighted(Map<String, Double> found, Map<String, Double> expected, String without) {
        double sumFound = 0;
        double sumExpected = 0;
        for (Map.Entry<String, Double> run : expected.entrySet()) {
            if (!run.getKey().equals(without)) {
                sumFound += found.get(run.getKey());
                sumExpected += run.getValue();
            }
        }
        return sumExpected == 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * sumFound / sumExpected);
    }

    private static Optional<WithoutLargest> withoutLargest(Map<String, Double> found, Map<String, Double> expected) {
        Optional<String> largest =
                expected.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
        if (largest.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble rest = weighted(found, expected, largest.get());
        return rest.isPresent() ? Optional.of(new WithoutLargest(largest.get(), rest.getAsDouble())) : Optional.empty();
    }

    private static PeriodMetrics metrics(List<String> runs, List<Metrics> metrics) {
        return new PeriodMetrics(
                runs,
                metrics.stream().mapToDouble(m -> m.inGrams().value()).sum(),
                metrics.stream().mapToDouble(m -> m.productGrams().value()).sum(),
                metrics.stream().mapToDouble(m -> m.solventGrams().value()).sum(),
                metrics.stream().mapToDouble(m -> m.waterGrams().value()).sum(),
                metrics.stream().mapToDouble(Metrics::reusedGrams).sum(),
                metrics.stream().mapToDouble(m -> m.pmi().value()).average());
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
