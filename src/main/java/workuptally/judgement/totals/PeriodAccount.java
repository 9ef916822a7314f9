package workuptally.judgement.totals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.totals.PeriodTotals.StreamTotal;
import workuptally.judgement.totals.PeriodTotals.WithoutLargest;
import workuptally.model.Run.Status;
import workuptally.tally.waste.SolventUse;
import workuptally.tally.waste.WasteLine;

/** Totals over the runs of a book or of a period: yields that can be stated, solvents, waste, mass metrics. */
public final class PeriodAccount {
    private PeriodAccount() {}

    /**
     * The totals.
     *
     * @param coverageFactor k of the expanded uncertainties that decided what can be stated
     * @param runs shares of the runs
     */
    public static PeriodTotals of(double coverageFactor, List<RunShare> runs) {
        List<String> excluded = new ArrayList<>();
        List<Double> yields = new ArrayList<>();
        for (RunShare run : runs) {
            excluded.addAll(run.excluded());
            yields.addAll(run.yieldPercents());
        }
        List<Double> sorted = yields.stream().sorted().toList();
        return new PeriodTotals(
                coverageFactor,
                count(runs, Status.ISOLATED),
                count(runs, Status.IN_WORKUP),
                count(runs, Status.PLANNED),
                yields.size(),
                yields.stream().mapToDouble(Double::doubleValue).average(),
                median(sorted),
                weighted(runs),
                excluded,
                solvents(runs),
                waste(runs),
                withoutLargest(runs),
                metrics(runs));
    }

    /** Σ found / Σ theory, %. */
    private static OptionalDouble weighted(List<RunShare> runs) {
        double found = runs.stream().mapToDouble(RunShare::foundMillimoles).sum();
        double expected = runs.stream().mapToDouble(RunShare::theoryMillimoles).sum();
        return expected == 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * found / expected);
    }

    private static Optional<WithoutLargest> withoutLargest(List<RunShare> runs) {
        Optional<RunShare> largest = runs.stream()
                .filter(r -> r.theoryMillimoles() > 0)
                .max(java.util.Comparator.comparingDouble(RunShare::theoryMillimoles));
        if (largest.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble rest =
                weighted(runs.stream().filter(r -> r != largest.get()).toList());
        return rest.isPresent()
                ? Optional.of(new WithoutLargest(largest.get().run(), rest.getAsDouble()))
                : Optional.empty();
    }

    private static PeriodMetrics metrics(List<RunShare> runs) {
        List<RunShare> measured =
                runs.stream().filter(r -> r.masses().isPresent()).toList();
        List<RunShare.Masses> masses =
                measured.stream().flatMap(r -> r.masses().stream()).toList();
        return new PeriodMetrics(
                measured.stream().map(RunShare::run).toList(),
                masses.stream().mapToDouble(RunShare.Masses::inGrams).sum(),
                masses.stream().mapToDouble(RunShare.Masses::productGrams).sum(),
                masses.stream().mapToDouble(RunShare.Masses::solventGrams).sum(),
                masses.stream().mapToDouble(RunShare.Masses::waterGrams).sum(),
                masses.stream().mapToDouble(RunShare.Masses::reusedGrams).sum(),
                masses.stream().mapToDouble(RunShare.Masses::pmi).average());
    }

    private static int count(List<RunShare> runs, Status status) {
        return (int) runs.stream().filter(r -> r.status() == status).count();
    }

    private static OptionalDouble median(List<Double> sorted) {
        int n = sorted.size();
        if (n == 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of((sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2);
    }

    private static List<SolventUse> solvents(List<RunShare> runs) {
        Map<String, SolventUse> sums = new LinkedHashMap<>();
        for (RunShare run : runs) {
            run.solvents().forEach(s -> sums.merge(s.solvent(), s, SolventUse::plus));
        }
        return List.copyOf(sums.values());
    }

    private static List<StreamTotal> waste(List<RunShare> runs) {
        Map<String, StreamTotal> sums = new LinkedHashMap<>();
        for (RunShare run : runs) {
            for (WasteLine line : run.waste()) {
                if (line.kept()) {
                    sums.merge(
                            line.stream(),
                            new StreamTotal(
                                    line.stream(),
                                    line.streamName(),
                                    1,
                                    line.massGrams().orElse(0),
                                    line.massGrams().isPresent() ? 0 : 1),
                            (a, b) -> new StreamTotal(
                                    a.stream(),
                                    a.streamName(),
                                    a.layers() + b.layers(),
                                    a.massGrams() + b.massGrams(),
                                    a.withoutMass() + b.withoutMass()));
                }
            }
        }
        return List.copyOf(sums.values());
    }
}
