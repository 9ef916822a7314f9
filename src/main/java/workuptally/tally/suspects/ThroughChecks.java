package workuptally.tally.suspects;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.model.Field.Entered;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunBalances;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Substances;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;

/**
 * Product that went through a layer: what was read in one that was worked up further, against what was found in the portions and lots that
 * were made from it alone. More than was there cannot come out of it; that much less needs a reason.
 */
final class ThroughChecks {
    private final Substances substances;
    private final Run run;
    private final List<LayerTally> layers;

    ThroughChecks(RunBalances balances, Substances substances) {
        this.substances = substances;
        this.run = balances.run();
        this.layers = balances.layers();
    }

    List<Check> list() {
        List<Check> all = new ArrayList<>();
        Optional<LayerGraph> graph = Optional.empty();
        for (LayerTally layer : layers) {
            if (layer.terminal() || layer.aliquot() || !layer.endsWorkup()) {
                continue;
            }
            for (Content content : layer.contents()) {
                boolean wanted =
                        run.product(content.substance()).filter(Product::wanted).isPresent();
                if (wanted && content.kind() == Content.Kind.MEASURED && content.isOwnEvidence()) {
                    graph = Optional.of(graph.orElseGet(() -> LayerGraph.of(run)));
                    check(graph.get(), layer, content).ifPresent(all::add);
                }
            }
        }
        return all;
    }

    private Optional<Check> check(LayerGraph graph, LayerTally layer, Content content) {
        Set<String> from = graph.madeFromAlone(layer.label());
        if (graph.isQuenched(Set.of(layer.label())) || graph.isQuenched(from)) {
            return Optional.empty();
        }
        double isolated = run.lots().stream()
                .filter(lot -> isMadeFrom(lot, from) && lot.isOf(content.substance()))
                .mapToDouble(lot -> pureGrams(lot).orElse(0))
                .sum();
        double left = layers.stream()
                .filter(l -> l.terminal() && from.contains(l.label()))
                .flatMap(l -> l.contents().stream())
                .filter(c -> c.isOf(content.substance()) && c.isOwnEvidence())
                .flatMap(c -> c.massGrams().stream())
                .mapToDouble(MeasuredValue::value)
                .sum();
        MeasuredValue through = content.massGrams().orElseThrow();
        double found = isolated + left;
        double lost = substances.value(Threshold.SUSPECT_THROUGH_LOST);
        double differ = substances.value(Threshold.SUSPECT_METHODS_DIFFER);
        // without an isolated lot nobody knows how much should be there
        return isolated <= 0
                ? Optional.empty()
                : Optional.of(new Check(
                        content.substance() + " through layer " + layer.label(),
                        through.value() - found,
                        -differ * found,
                        lost / (1 - lost) * found,
                        Math.hypot(through.standardUncertainty(), differ * found),
                        found));
    }

    /** A lot straight from the workup, not what was purified from another one. */
    private boolean isMadeFrom(Lot lot, Set<String> labels) {
        boolean ofALot = run.lots().stream()
                .anyMatch(other -> other != lot
                        && (lot.from().contains(other.label())
                                || run.steps().stream()
                                        .anyMatch(s -> s.from().contains(other.label())
                                                && s.gives().contains(lot.label()))));
        return !ofALot && labels.contains(lot.label());
    }

    private static OptionalDouble pureGrams(Lot lot) {
        OptionalDouble net = EntryChecks.netGrams(lot);
        Optional<Entered> assay = lot.assayPercent().entered();
        return net.isPresent() && assay.isPresent()
                ? OptionalDouble.of(net.getAsDouble() * assay.get().value() / 100)
                : OptionalDouble.empty();
    }
}
