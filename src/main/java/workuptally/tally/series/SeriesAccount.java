package workuptally.tally.series;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.chemistry.IndividualsChart;
import workuptally.chemistry.Statistics;
import workuptally.model.Amount;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.HistoryPoint;
import workuptally.model.Limit;
import workuptally.model.Lot;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ProductYield;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.YieldBasis;
import workuptally.tally.series.SeriesTally.Chart;
import workuptally.tally.series.SeriesTally.Material;
import workuptally.tally.series.SeriesTally.Point;
import workuptally.tally.series.SeriesTally.Result;
import workuptally.tally.series.SeriesTally.Together;
import workuptally.tally.waste.SolventUse;
import workuptally.tally.waste.WasteLine;

/** Repeated preparations of a book. */
public final class SeriesAccount {

    private final Book book;
    private final Substances substances;
    private final List<RunTally> tallies;

    /**
     * Series of a book.
     *
     * @param book the entries
     * @param tallies results of its runs
     */
    public SeriesAccount(Book book, List<RunTally> tallies, Substances substances) {
        this.book = book;
        this.substances = substances;
        this.tallies = List.copyOf(tallies);
    }

    /** One tally per series, those with a history first, in order of the tables. */
    public List<SeriesTally> list() {
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, List<HistoryPoint>> history = new HashMap<>();
        Map<String, List<RunTally>> runs = new HashMap<>();
        for (HistoryPoint point : book.history()) {
            String key = key(point.series());
            names.putIfAbsent(key, point.series());
            history.computeIfAbsent(key, k -> new ArrayList<>()).add(point);
        }
        for (RunTally run : tallies) {
            String key = key(run.run().head().series());
            names.putIfAbsent(key, run.run().head().series());
            runs.computeIfAbsent(key, k -> new ArrayList<>()).add(run);
        }
        names.remove("");
        return names.entrySet().stream()
                .map(name -> series(
                        name.getValue(),
                        points(history.getOrDefault(name.getKey(), List.of())),
                        runs.getOrDefault(name.getKey(), List.of())))
                .toList();
    }

    private SeriesTally series(String name, List<Point> history, List<RunTally> runs) {
        List<Double> baseline = history.stream().map(Point::yieldPercent).toList();
        Optional<IndividualsChart> chart = baseline.size() >= IndividualsChart.LEAST_POINTS
                ? Optional.of(IndividualsChart.of(baseline))
                : Optional.empty();
        List<Result> results = new ArrayList<>();
        for (RunTally run : runs) {
            result(run)
                    .ifPresent(y -> results.add(new Result(
                            run.run().id(),
                            y.product().name(),
                            y.percent().value(),
                            chart.map(c -> signals(c, baseline, y.percent().value()))
                                    .orElse(List.of()))));
        }
        return new SeriesTally(
                name,
                history,
                chart.map(c -> new Chart(
                        c.centre(), c.lowerLimit(), c.upperLimit(), c.meanMovingRange(), c.movingRangeLimit())),
                results,
                runs.size() >= substances.value(Threshold.CLASS_RUNS) ? Optional.of(together(runs)) : Optional.empty());
    }

    private static String key(String series) {
        return series.strip().toLowerCase(Locale.ROOT);
    }

    /** Earlier results with a number, by date. */
    private static List<Point> points(List<HistoryPoint> history) {
        return history.stream()
                .sorted(Comparator.comparing((HistoryPoint p) -> p.date().orElse(LocalDate.MIN)))
                .flatMap(p -> p.yieldPercent().entered().stream().map(e -> new Point(p.date(), e.value(), e.place())))
                .toList();
    }

    /** The result of a run that is judged: its first yield by an assay at the end of the workup. */
    private static Optional<ProductYield> result(RunTally run) {
        return run.yields().stream()
                .filter(y -> y.endsWorkup() && y.basis() == YieldBasis.ASSAY)
                .findFirst();
    }

    /** What a new result signals after a baseline, in words. */
    private static List<String> signals(IndividualsChart chart, List<Double> baseline, double yieldPercent) {
        List<Double> values = new ArrayList<>(baseline);
        values.add(yieldPercent);
        return chart.signals(values).stream()
                .filter(s -> s.index() == baseline.size())
                .map(s -> words(s.rule()))
                .toList();
    }

    private static String words(IndividualsChart.Rule rule) {
        return switch (rule) {
            case OUTSIDE_LIMITS -> "outside the limits";
            case MOVING_RANGE -> "further from the result before than the moving range allows";
            case NINE_ON_ONE_SIDE -> "nine in a row on one side of the mean";
            case SIX_RISING_OR_FALLING -> "six in a row rising or falling";
        };
    }

    private Together together(List<RunTally> runs) {
        List<String> copies = copies(runs);
        List<String> leftOut = new ArrayList<>();
        List<String> counting = new ArrayList<>();
        List<Double> yields = new ArrayList<>();
        double solvents = 0;
        double kept = 0;
        for (RunTally run : runs) {
            solvents += run.solvents().stream().mapToDouble(SolventUse::inGrams).sum();
            kept += run.waste().stream()
                    .filter(WasteLine::kept)
                    .mapToDouble(line -> line.massGrams().orElse(0))
                    .sum();
            Optional<ProductYield> result = result(run);
            String id = run.run().id();
            if (copies.contains(id)) {
                leftOut.add(id + ": copied from an earlier run");
            } else if (result.isEmpty()) {
                leftOut.add(id + ": no yield by an assay");
            } else if (isAboveAll(result.get())) {
                leftOut.add(id + ": above 100 %");
            } else {
                counting.add(id);
                yields.add(result.get().percent().value());
            }
        }
        boolean enough = yields.size() >= 2;
        return new Together(
                runs.size(),
                yields.size(),
                yields.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Statistics.median(yields)),
                enough ? OptionalDouble.of(Statistics.robustSpread(yields)) : OptionalDouble.empty(),
                enough ? Statistics.outliers(yields).stream().map(counting::get).toList() : List.of(),
                copies,
                leftOut,
                solvents,
                kept,
                materials(runs));
    }

    /** Above 100 % by more than its expanded uncertainty. */
    private boolean isAboveAll(ProductYield result) {
        return result.isAboveAll(book.limits().value(Limit.COVERAGE_FACTOR));
    }

    /** Runs with a lot whose gross and tare, or net mass and assay, equal those of an earlier run; a net mass alone is no sign, nor is any that chance explains. */
    private static List<String> copies(List<RunTally> runs) {
        boolean chance = new EqualByChance(runs.stream()
                        .flatMap(run -> run.run().lots().stream())
                        .map(SeriesAccount::net)
                        .filter(net -> !net.isEmpty())
                        .map(Double::valueOf)
                        .toList())
                .isLikely();
        Set<String> seen = new HashSet<>();
        Set<String> copies = new LinkedHashSet<>();
        for (RunTally run : runs) {
            Set<String> own = new LinkedHashSet<>();
            for (Lot lot : run.run().lots()) {
                String gross = typed(lot.weighing().grossGrams());
                String tare = typed(lot.weighing().tareGrams());
                if (!gross.isEmpty() && !tare.isEmpty()) {
                    own.add("weighing " + gross + "|" + tare);
                }
                String assay = typed(lot.assayPercent());
                String net = net(lot);
                if (!net.isEmpty() && !assay.isEmpty() && !chance) {
                    own.add("net " + net + "|" + assay);
                }
            }
            if (own.stream().anyMatch(seen::contains)) {
                copies.add(run.run().id());
            }
            seen.addAll(own);
        }
        return List.copyOf(copies);
    }

    private static String typed(Field field) {
        return field.entered().map(Field.Entered::asTyped).orElse("");
    }

    private static String net(Lot lot) {
        return lot.weighing()
                .grossGrams()
                .entered()
                .flatMap(g -> lot.weighing()
                        .tareGrams()
                        .entered()
                        .map(t -> String.format(Locale.ROOT, "%.5f", g.value() - t.value())))
                .orElseGet(() -> lot.weighing()
                        .netGrams()
                        .entered()
                        .map(n -> String.format(Locale.ROOT, "%.5f", n.value()))
                        .orElse(""));
    }

    private static List<Material> materials(List<RunTally> runs) {
        Map<String, Material> sums = new LinkedHashMap<>();
        for (RunTally run : runs) {
            for (Charge charge : run.run().charges()) {
                Optional<Amount> planned = charge.quantity().planned();
                Optional<Amount> actual = charge.quantity().actual();
                if (planned.isEmpty()
                        || actual.isEmpty()
                        || planned.get().dimension() != actual.get().dimension()) {
                    continue;
                }
                Optional<Double> plan = planned.get().value().entered().map(Field.Entered::value);
                Optional<Double> done = actual.get().value().entered().map(Field.Entered::value);
                if (plan.isPresent() && done.isPresent()) {
                    String unit = planned.get().dimension().unit();
                    sums.merge(
                            key(charge.material()) + "|" + unit,
                            new Material(charge.material(), unit, plan.get(), done.get()),
                            (a, b) -> new Material(
                                    a.material(), a.unit(), a.planned() + b.planned(), a.actual() + b.actual()));
                }
            }
        }
        return List.copyOf(sums.values());
    }
}
