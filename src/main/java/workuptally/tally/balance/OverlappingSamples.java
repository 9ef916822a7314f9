package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.measure.StandardUncertainty;
import workuptally.tally.amounts.Content;

/**
 * Composite samples of one substance that share layers, {@code A1+A2} and {@code A2+A3}: what they tell together, in whatever order they stand.
 *
 * <p>All layers together hold no more than the fewest samples that cover them, and no less than samples that share no layer. Between the two
 * nobody knows: the middle counts in a balance, with the half width of a rectangular distribution (JCGM 100:2008, 4.3.7).
 *
 * @param samples the samples, at least one
 */
record OverlappingSamples(List<CompositeSample> samples) {
    /** Copies the list. */
    OverlappingSamples {
        samples = List.copyOf(samples);
    }

    /** Samples that share layers, directly or by way of others, put together; in order of their first one. */
    static List<OverlappingSamples> of(List<CompositeSample> all) {
        List<OverlappingSamples> groups = new ArrayList<>();
        Set<CompositeSample> grouped = Collections.newSetFromMap(new IdentityHashMap<>());
        for (CompositeSample first : all) {
            if (!grouped.add(first)) {
                continue;
            }
            List<CompositeSample> group = new ArrayList<>(List.of(first));
            for (int i = 0; i < group.size(); i++) {
                CompositeSample member = group.get(i);
                all.stream().filter(s -> s.overlaps(member) && grouped.add(s)).forEach(group::add);
            }
            groups.add(
                    new OverlappingSamples(all.stream().filter(group::contains).toList()));
        }
        return groups;
    }

    /**
     * The samples among some that cover all these labels and hold the least together; empty where they do not cover them.
     *
     * @param amount what a sample holds, 0 or more
     */
    static Optional<List<CompositeSample>> leastCover(
            Collection<String> labels, List<CompositeSample> by, ToDoubleFunction<CompositeSample> amount) {
        if (labels.isEmpty()) {
            return Optional.of(List.of());
        }
        String next = labels.iterator().next();
        Optional<List<CompositeSample>> least = Optional.empty();
        for (CompositeSample sample : by) {
            if (sample.labels().contains(next)) {
                Set<String> rest = new LinkedHashSet<>(labels);
                sample.labels().forEach(rest::remove);
                Optional<List<CompositeSample>> cover =
                        leastCover(rest, by, amount).map(c -> with(sample, c));
                if (cover.isPresent() && (least.isEmpty() || sum(cover.get(), amount) < sum(least.get(), amount))) {
                    least = cover;
                }
            }
        }
        return least;
    }

    /**
     * The samples among some that lie within these labels, share no layer and hold the most together.
     *
     * @param amount what a sample holds at least, 0 or more
     */
    static List<CompositeSample> mostApart(
            Collection<String> labels, List<CompositeSample> by, ToDoubleFunction<CompositeSample> amount) {
        if (labels.isEmpty()) {
            return List.of();
        }
        String next = labels.iterator().next();
        Set<String> without = new LinkedHashSet<>(labels);
        without.remove(next);
        List<CompositeSample> most = mostApart(without, by, amount);
        for (CompositeSample sample : by) {
            if (sample.labels().contains(next) && labels.containsAll(sample.labels())) {
                Set<String> rest = new LinkedHashSet<>(labels);
                sample.labels().forEach(rest::remove);
                List<CompositeSample> apart = with(sample, mostApart(rest, by, amount));
                if (sum(apart, amount) > sum(most, amount)) {
                    most = apart;
                }
            }
        }
        return most;
    }

    private static List<CompositeSample> with(CompositeSample one, List<CompositeSample> others) {
        List<CompositeSample> list = new ArrayList<>(List.of(one));
        list.addAll(others);
        return list;
    }

    private static double sum(List<CompositeSample> samples, ToDoubleFunction<CompositeSample> amount) {
        return samples.stream().mapToDouble(amount).sum();
    }

    /**
     * One content of them all, as it counts in a balance; a single sample is itself.
     *
     * @param order labels of all layers, in order
     */
    CompositeSample together(List<String> order, Readings readings) {
        if (samples.size() == 1) {
            return samples.get(0);
        }
        List<String> labels = order.stream()
                .filter(label -> samples.stream().anyMatch(s -> s.labels().contains(label)))
                .toList();
        boolean measured = samples.stream().anyMatch(s -> s.together().kind() == Content.Kind.MEASURED);
        boolean disputed = samples.stream().anyMatch(s -> s.together().rests() == Content.Rests.DISPUTED_READINGS);
        List<CompositeSample> cover =
                leastCover(labels, samples, CompositeSample::estimateGrams).orElseThrow();
        List<CompositeSample> apart = mostApart(labels, samples, CompositeSample::measuredGrams);
        MeasuredValue mass = measured
                ? between(masses(apart, readings), masses(cover, readings), disputed, readings)
                : cover.stream()
                        .map(s -> s.together().massGrams().orElseThrow())
                        .reduce(MeasuredValue::plus)
                        .orElseThrow();
        double atMost = leastCover(labels, samples, CompositeSample::atMostGrams)
                .map(c -> sum(c, CompositeSample::atMostGrams))
                .orElseThrow();
        Content one = samples.get(0).together();
        Optional<MeasuredValue> amount = one.massGrams()
                .filter(m -> m.value() > 0)
                .flatMap(m -> one.amountMillimoles().map(n -> mass.times(n.value() / m.value())));
        return new CompositeSample(
                labels,
                new Content(
                        one.substance(),
                        measured ? Content.Kind.MEASURED : Content.Kind.BOUND,
                        Optional.of(mass),
                        amount,
                        OptionalDouble.of(
                                disputed ? Math.max(atMost, sum(apart, CompositeSample::atMostGrams)) : atMost),
                        OptionalDouble.empty(),
                        samples.stream().map(s -> s.together().evidence()).collect(Collectors.joining(" and ")),
                        disputed ? Content.Rests.DISPUTED_READINGS : Content.Rests.OWN_READING));
    }

    /** The results of samples, a non-detect at its limit. */
    private static MeasuredValue masses(List<CompositeSample> samples, Readings readings) {
        return samples.stream()
                .map(s -> s.together().kind() == Content.Kind.MEASURED
                        ? s.together().massGrams().orElseThrow()
                        : readings.exact(s.atMostGrams()))
                .reduce(MeasuredValue::plus)
                .orElseGet(() -> readings.exact(0));
    }

    private MeasuredValue between(MeasuredValue least, MeasuredValue most, boolean disputed, Readings readings) {
        if (disputed) {
            return least.value() > most.value() ? least : most;
        }
        double halfWidth = Math.max(0, most.value() - least.value()) / 2;
        return least.plus(most)
                .over(2)
                .plus(readings.enter(
                        "share of " + samples.get(0).substance() + " in layers of several composite samples",
                        "g",
                        0,
                        StandardUncertainty.rectangular(halfWidth),
                        () -> "Assays"));
    }
}
