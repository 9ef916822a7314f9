package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import workuptally.measure.MeasuredValue;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.amounts.YieldBasis;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;

/**
 * The balances of the purifications of a run: one for each product of lots that other lots were made from. Lots and portions that come of
 * the same lots, a pool of liquors among them, are of one balance; what was made from one of these lots and purified again is neither put in
 * nor found but for what is left of it. Of what was purified without an assay the whole mass stands in it, as an
 * upper bound. A step may say how much of a lot it took: its mass, without a material.
 */
public final class PurificationAccount {
    private final Run run;
    private final LayerGraph graph;
    private final List<LotTally> lots;
    private final List<LayerTally> layers;

    /** Of the lots and layers of a run with their contents. */
    public PurificationAccount(Run run, List<LotTally> lots, List<LayerTally> layers) {
        this.run = run;
        this.graph = LayerGraph.of(run);
        this.lots = lots;
        this.layers = layers;
    }

    /** In order of the lots that were made. */
    public List<Purification> list() {
        List<Purification> balances = new ArrayList<>();
        for (Set<String> sources : purified()) {
            lots.stream()
                    .filter(l -> sources.contains(l.lot().label()))
                    .map(LotTally::product)
                    .distinct()
                    .forEach(product -> balance(sources, product).ifPresent(balances::add));
        }
        return balances;
    }

    /** Sets of lots that something was made from, those joined that have something made from both. */
    private List<Set<String>> purified() {
        List<Set<String>> joined = new ArrayList<>();
        for (LotTally lot : lots) {
            Set<String> own = graph.nearestLots(lot.lot().label());
            if (!own.isEmpty()) {
                join(joined, own);
            }
        }
        List<Set<String>> ofLots = List.copyOf(joined);
        portions()
                .map(layer -> graph.nearestLots(layer.label()))
                .filter(own -> ofLots.stream().anyMatch(set -> own.stream().anyMatch(set::contains)))
                .forEach(own -> join(joined, own));
        return joined;
    }

    private static void join(List<Set<String>> sets, Set<String> own) {
        Set<String> all = new LinkedHashSet<>(own);
        sets.removeIf(set -> {
            boolean shared = set.stream().anyMatch(all::contains);
            if (shared) {
                all.addAll(set);
            }
            return shared;
        });
        sets.add(all);
    }

    private Stream<LayerTally> portions() {
        return layers.stream().filter(l -> l.terminal() && !l.endsWorkup() && !l.aliquot());
    }

    private Optional<Purification> balance(Set<String> sources, String product) {
        Set<String> first = new LinkedHashSet<>(sources);
        first.removeIf(label -> comesOfAny(label, sources));
        List<LotTally> before = lots.stream()
                .filter(l -> first.contains(l.lot().label()) && l.isOf(product))
                .toList();
        boolean known = before.stream().allMatch(l -> l.atMostGrams().isPresent())
                && before.stream().map(l -> l.lot().label()).distinct().count() == first.size();
        Optional<MeasuredValue> in = before.stream()
                .flatMap(l -> l.atMostGrams().map(most -> most.times(taken(l))).stream())
                .reduce(MeasuredValue::plus);
        if (!known || in.isEmpty() || in.get().value() <= 0) {
            return Optional.empty();
        }
        Found found = new Found();
        for (LotTally lot : lots) {
            String label = lot.lot().label();
            double left = sources.contains(label) ? 1 - taken(lot) : 1;
            if (comesOfAny(label, sources) && lot.isOf(product) && left > 0) {
                found.lot(lot, left);
            }
        }
        if (found.masses.isEmpty()) {
            return Optional.empty();
        }
        portions().filter(l -> comesOfAny(l.label(), sources)).forEach(layer -> portion(found, layer, product));
        return Optional.of(new Purification(
                first,
                found.made,
                product,
                in.get(),
                before.stream().anyMatch(l -> l.pureGrams().isEmpty()),
                found.masses.stream().reduce(MeasuredValue::plus).orElseThrow(),
                found.assayed.stream().reduce(MeasuredValue::plus),
                found.boundedGrams,
                found.portions,
                found.unknown,
                found.unknownAtMostGrams));
    }

    /** A layer of a purification: what it holds by its own evidence, else at most by a bound, else nobody knows. */
    private void portion(Found found, LayerTally layer, String product) {
        found.portions.add(layer.label());
        Optional<Content> content =
                layer.contents().stream().filter(c -> c.isOf(product)).findFirst();
        OptionalDouble most = content.map(Content::upperBoundGrams).orElse(OptionalDouble.empty());
        Optional<MeasuredValue> mass = content.filter(Content::isOwnEvidence).flatMap(Content::massGrams);
        if (mass.isPresent()) {
            found.masses.add(mass.get());
            found.assayed.add(mass.get());
        } else if (most.isPresent()
                && content.filter(Content::isBoundedByConservation).isEmpty()) {
            found.boundedGrams += most.getAsDouble();
        } else if (content.isPresent() || !isSolventTakenOff(layer)) {
            found.unknown(layer.label(), layer.massGrams());
        }
    }

    /** What came of a purification, as it is added up. */
    private static final class Found {
        final List<MeasuredValue> masses = new ArrayList<>();
        final List<MeasuredValue> assayed = new ArrayList<>();
        final List<String> made = new ArrayList<>();
        final List<String> portions = new ArrayList<>();
        final List<String> unknown = new ArrayList<>();
        double boundedGrams;
        double unknownAtMostGrams;

        /** A lot, or the part of it that was not purified further, 0 to 1. */
        void lot(LotTally lot, double left) {
            if (lot.pureGrams().isEmpty()) {
                unknown(lot.lot().label(), lot.netGrams().map(net -> net.times(lot.gramsPerGram() * left)));
                return;
            }
            MeasuredValue pure = lot.pureGrams().get().times(left);
            masses.add(pure);
            made.add(lot.lot().label());
            if (lot.basis() == YieldBasis.ASSAY) {
                assayed.add(pure);
            }
        }

        /** Of what nobody assayed the whole mass; without a weighing anything. */
        void unknown(String label, Optional<MeasuredValue> weighed) {
            unknown.add(label);
            unknownAtMostGrams += weighed.map(MeasuredValue::value).orElse(Double.POSITIVE_INFINITY);
        }
    }

    /** A distillate of an evaporation; one that a volatile product goes over with has a content of it, if only an unknown one. */
    private boolean isSolventTakenOff(LayerTally layer) {
        boolean evaporated = graph.givenBy(layer.label())
                .flatMap(Step::operation)
                .filter(o -> o == Step.Operation.CONCENTRATE || o == Step.Operation.STRIP)
                .isPresent();
        return evaporated
                && layer.phase().filter(p -> p == Layer.Phase.DISTILLATE).isPresent();
    }

    /** Part of a lot that was purified, 0 to 1: where each step that takes of it says how much, these together; else all of it. */
    private double taken(LotTally lot) {
        String label = lot.lot().label();
        List<Step> taking = graph.takenBy(label);
        boolean told = !taking.isEmpty()
                && taking.stream().allMatch(step -> step.isOfPartOf(run))
                && graph.children(label).stream()
                        .allMatch(made -> graph.givenBy(made).isPresent());
        return told && lot.netGrams().isPresent()
                ? Math.min(
                        1,
                        taking.stream()
                                        .mapToDouble(step -> step.added()
                                                .massGrams()
                                                .entered()
                                                .orElseThrow()
                                                .value())
                                        .sum()
                                / lot.netGrams().get().value())
                : 1;
    }

    private boolean comesOfAny(String label, Set<String> sources) {
        return graph.nearestLots(label).stream().anyMatch(sources::contains);
    }
}
