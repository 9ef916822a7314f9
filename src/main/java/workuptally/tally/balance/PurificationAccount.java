package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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
 * the same lots, a pool of liquors among them, are of one balance. Of what was purified without an assay the whole mass stands in it, as an
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

    private java.util.stream.Stream<LayerTally> portions() {
        return layers.stream().filter(l -> l.terminal() && !l.endsWorkup() && !l.aliquot());
    }

    private Optional<Purification> balance(Set<String> sources, String product) {
        List<LotTally> before = lots.stream()
                .filter(l -> sources.contains(l.lot().label()) && l.isOf(product))
                .toList();
        boolean known = before.stream().allMatch(l -> l.atMostGrams().isPresent())
                && before.stream().map(l -> l.lot().label()).distinct().count() == sources.size();
        Optional<MeasuredValue> in = before.stream()
                .flatMap(l -> l.atMostGrams().map(most -> most.times(taken(l))).stream())
                .reduce(MeasuredValue::plus);
        if (!known || in.isEmpty() || in.get().value() <= 0) {
            return Optional.empty();
        }
        List<MeasuredValue> found = new ArrayList<>();
        List<MeasuredValue> assayed = new ArrayList<>();
        List<String> made = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        double unknownAtMost = 0;
        for (LotTally lot : lots) {
            if (comesOf(lot.lot().label(), sources) && lot.isOf(product)) {
                if (lot.pureGrams().isPresent()) {
                    found.add(lot.pureGrams().get());
                    made.add(lot.lot().label());
                    if (lot.basis() == YieldBasis.ASSAY) {
                        assayed.add(lot.pureGrams().get());
                    }
                } else {
                    unknown.add(lot.lot().label());
                    unknownAtMost += grams(lot.netGrams().map(net -> net.times(lot.gramsPerGram())));
                }
            }
        }
        if (found.isEmpty()) {
            return Optional.empty();
        }
        double bounded = 0;
        List<String> labels = new ArrayList<>();
        for (LayerTally layer :
                portions().filter(l -> comesOf(l.label(), sources)).toList()) {
            labels.add(layer.label());
            Optional<Content> content =
                    layer.contents().stream().filter(c -> c.isOf(product)).findFirst();
            OptionalDouble most = content.map(Content::upperBoundGrams).orElse(OptionalDouble.empty());
            Optional<MeasuredValue> mass =
                    content.filter(Content::isOwnEvidence).flatMap(Content::massGrams);
            if (mass.isPresent()) {
                found.add(mass.get());
                assayed.add(mass.get());
            } else if (most.isPresent()
                    && content.filter(Content::isBoundedByConservation).isEmpty()) {
                bounded += most.getAsDouble();
            } else if (!isSolventTakenOff(layer, product)) {
                unknown.add(layer.label());
                unknownAtMost += grams(layer.massGrams());
            }
        }
        return Optional.of(new Purification(
                sources,
                made,
                product,
                in.get(),
                before.stream().anyMatch(l -> l.pureGrams().isEmpty()),
                found.stream().reduce(MeasuredValue::plus).orElseThrow(),
                assayed.stream().reduce(MeasuredValue::plus),
                bounded,
                labels,
                unknown,
                unknownAtMost));
    }

    /** A distillate of an evaporation, in which a product without a boiling point is not looked for. */
    private boolean isSolventTakenOff(LayerTally layer, String product) {
        boolean evaporated = graph.givenBy(layer.label())
                .flatMap(Step::operation)
                .filter(o -> o == Step.Operation.CONCENTRATE || o == Step.Operation.STRIP)
                .isPresent();
        return evaporated
                && layer.phase().filter(p -> p == Layer.Phase.DISTILLATE).isPresent()
                && run.product(product)
                        .filter(p -> p.boilingPointCelsius().entered().isPresent())
                        .isEmpty();
    }

    private static double grams(Optional<MeasuredValue> weighed) {
        return weighed.map(MeasuredValue::value).orElse(Double.POSITIVE_INFINITY);
    }

    /** Part of a lot that steps took of it, where they say how much; else all of it. */
    private double taken(LotTally lot) {
        double grams = run.steps().stream()
                .filter(s -> s.from().contains(lot.lot().label()) && s.isOfPartOf(run))
                .mapToDouble(s -> s.added().massGrams().entered().orElseThrow().value())
                .sum();
        return grams > 0 && lot.netGrams().isPresent()
                ? Math.min(1, grams / lot.netGrams().get().value())
                : 1;
    }

    private boolean comesOf(String label, Set<String> sources) {
        return !sources.contains(label) && graph.nearestLots(label).stream().anyMatch(sources::contains);
    }
}
