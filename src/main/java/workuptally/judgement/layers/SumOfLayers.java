package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.layers.LayerTally;

/**
 * What the kept layers of a run hold together, per product: the 95 % quantile of their sum, Σ m + 1.645·u(Σ m), non-detects and other bounds
 * at their limit, and never less than its largest part. What was not found can be in one layer only, so layers bounded by conservation count
 * once, together.
 *
 * <p>Layers that fail the limit on their own are set apart first; then the largest of the rest, until what is left fits the run's limit.
 * Only layers that were measured are set apart as larger than another one. A layer that was not measured, or of which only a bound is known,
 * counts beside each other one, at most at the size of that one: it may hold as little, so that a reading that is worse or gone never lets
 * another layer pass.
 * Liquors of a purification belong to another balance and are not summed.
 */
final class SumOfLayers {
    private static final double ONE_SIDED_95 = 1.645;

    private final Limits limits;
    private final Map<String, Sum> sums = new LinkedHashMap<>();
    private final Set<String> heldBySum = new LinkedHashSet<>();

    private SumOfLayers(Limits limits) {
        this.limits = limits;
    }

    static SumOfLayers of(RunTally run, Limits limits) {
        SumOfLayers result = new SumOfLayers(limits);
        List<LayerTally> kept =
                KeptLayers.of(run).stream().filter(LayerTally::endsWorkup).toList();
        run.theory().ifPresent(t -> t.products().forEach(p -> result.judge(p, kept)));
        return result;
    }

    /** Products of which a sum was made. */
    Set<String> products() {
        return sums.keySet();
    }

    /** The sum over all kept layers, and what is left after setting the largest apart. */
    Optional<Sum> sum(String product) {
        return Optional.ofNullable(sums.get(product));
    }

    /** True where the layer was set apart so that the rest fits. */
    boolean isSetApart(String layer) {
        return heldBySum.contains(layer);
    }

    private void judge(ProductTheory product, List<LayerTally> kept) {
        String name = product.product().name();
        double theory = product.massGrams().value();
        double runLimit = limits.value(Limit.RUN_LIMIT) / 100 * theory;
        double layerLimit = limits.value(Limit.LAYER_LIMIT) / 100 * theory;
        List<LayerTally> holding =
                kept.stream().filter(l -> content(l, name).isPresent()).toList();
        List<LayerTally> rest = new ArrayList<>();
        double most = 0;
        for (LayerTally layer : holding) {
            double together = besideOthers(layer, kept, name, layerLimit);
            if (guarded(List.of(layer), name) > layerLimit || together > runLimit) {
                heldBySum.add(layer.label());
            } else {
                rest.add(layer);
                most = Math.max(most, together);
            }
        }
        double all = guarded(holding, name);
        sums.put(
                name,
                new Sum(
                        all,
                        100 * all / theory,
                        rest.stream().map(LayerTally::label).toList(),
                        most,
                        100 * most / theory));
    }

    /** Undisputed result of the layer itself, g; empty where only a bound is known. */
    private static Optional<Double> measured(LayerTally layer, String product) {
        return content(layer, product)
                .filter(c -> c.kind() == Content.Kind.MEASURED && c.isOwnEvidence())
                .flatMap(Content::massGrams)
                .map(MeasuredValue::value);
    }

    /** What a layer and those that are not set apart before it hold together, g. */
    private static double besideOthers(LayerTally layer, List<LayerTally> kept, String product, double layerLimit) {
        double own = guarded(List.of(layer), product);
        Optional<Double> ownMeasured = measured(layer, product);
        boolean conserved =
                content(layer, product).filter(Content::isBoundedByConservation).isPresent();
        List<LayerTally> counted = new ArrayList<>(List.of(layer));
        int atOwnSize = 0;
        for (LayerTally other : kept) {
            Optional<Content> content = content(other, product);
            Optional<Double> measured = measured(other, product);
            boolean sharesTheRest = conserved
                    && content.filter(Content::isBoundedByConservation).isPresent();
            if (other == layer
                    || sharesTheRest
                    || measured.filter(m -> m > layerLimit).isPresent()) {
                continue;
            }
            if (measured.isPresent()) {
                if (measured.get() <= ownMeasured.orElse(own)) {
                    counted.add(other);
                } else if (ownMeasured.isEmpty()) {
                    atOwnSize++;
                }
            } else if (content.filter(c -> !c.isBoundedByConservation()).isPresent()
                    && guarded(List.of(other), product) <= own) {
                counted.add(other);
            } else {
                atOwnSize++;
            }
        }
        return guarded(counted, product) + atOwnSize * own;
    }

    private static Optional<Content> content(LayerTally layer, String product) {
        return layer.contents().stream()
                .filter(c -> c.substance().equalsIgnoreCase(product))
                .filter(LayerEvidence::isBounded)
                .findFirst();
    }

    /** What all layers bounded by conservation hold together at most, g. */
    private static double conservation(List<LayerTally> layers, String product) {
        return layers.stream()
                .flatMap(l -> content(l, product).stream())
                .filter(Content::isBoundedByConservation)
                .mapToDouble(c -> c.upperBoundGrams().orElse(0))
                .max()
                .orElse(0);
    }

    /** Measured contents as their sum plus 1.645·u of the sum, bounds at their limit, g; at least the largest bound of one of them. */
    static double guarded(List<LayerTally> layers, String product) {
        double bounds = conservation(layers, product);
        double largest = bounds;
        Optional<MeasuredValue> measured = Optional.empty();
        for (LayerTally layer : layers) {
            Optional<Content> content = content(layer, product);
            if (content.isEmpty() || content.get().isBoundedByConservation()) {
                continue;
            }
            Optional<MeasuredValue> mass = content.get().massGrams();
            largest = Math.max(largest, content.get().upperBoundGrams().orElse(0));
            if (content.get().kind() == Content.Kind.BOUND || mass.isEmpty()) {
                bounds += content.get().upperBoundGrams().orElse(0);
            } else {
                measured = Optional.of(measured.map(m -> m.plus(mass.get())).orElse(mass.get()));
            }
        }
        return Math.max(
                largest,
                bounds
                        + measured.map(m -> m.value() + ONE_SIDED_95 * m.standardUncertainty())
                                .orElse(0.0));
    }

    /**
     * A product over the kept layers.
     *
     * @param allGrams what all kept layers hold at most, one-sided 95 %, g
     * @param allPercent the same, % of theory
     * @param rest labels left after setting the largest apart
     * @param restGrams what the largest of them and the others, at most of its size each, hold together at most, one-sided 95 %, g
     * @param restPercent the same, % of theory
     */
    record Sum(double allGrams, double allPercent, List<String> rest, double restGrams, double restPercent) {
        Sum {
            rest = List.copyOf(rest);
        }
    }
}
