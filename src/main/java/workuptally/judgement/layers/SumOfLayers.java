package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.Comparator;
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
 * What the kept layers of a run hold together, per product: Σ m + 1.645·u(Σ m), with non-detects and bounds at their limit. What was not
 * found can be in one layer only, so layers bounded by conservation count once, together.
 *
 * <p>Layers that fail the limit on their own are set apart first; then the largest of the rest, until what is left fits the run's limit.
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
        for (LayerTally layer : holding) {
            if (guarded(List.of(layer), name) > layerLimit) {
                heldBySum.add(layer.label());
            } else {
                rest.add(layer);
            }
        }
        while (!rest.isEmpty() && guarded(rest, name) > runLimit) {
            LayerTally largest = rest.stream()
                    .max(Comparator.comparingDouble(l -> guarded(List.of(l), name)))
                    .orElseThrow();
            rest.remove(largest);
            heldBySum.add(largest.label());
        }
        sums.put(
                name,
                new Sum(
                        plain(holding, name),
                        100 * plain(holding, name) / theory,
                        rest.stream().map(LayerTally::label).toList(),
                        guarded(rest, name),
                        100 * guarded(rest, name) / theory));
    }

    private static Optional<Content> content(LayerTally layer, String product) {
        return layer.contents().stream()
                .filter(c -> c.substance().equalsIgnoreCase(product))
                .filter(c -> c.upperBoundGrams().isPresent())
                .findFirst();
    }

    private static double plain(List<LayerTally> layers, String product) {
        return conservation(layers, product)
                + layers.stream()
                        .flatMap(l -> content(l, product).stream())
                        .filter(c -> !c.isBoundedByConservation())
                        .mapToDouble(c -> c.kind() == Content.Kind.BOUND
                                ? c.upperBoundGrams().orElse(0)
                                : c.massGrams().map(MeasuredValue::value).orElse(0.0))
                        .sum();
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

    /** Measured contents as their sum plus 1.645·u of the sum, bounds at their limit, g. */
    static double guarded(List<LayerTally> layers, String product) {
        double bounds = conservation(layers, product);
        Optional<MeasuredValue> measured = Optional.empty();
        for (LayerTally layer : layers) {
            Optional<Content> content = content(layer, product);
            if (content.isEmpty() || content.get().isBoundedByConservation()) {
                continue;
            }
            Optional<MeasuredValue> mass = content.get().massGrams();
            if (content.get().kind() == Content.Kind.BOUND || mass.isEmpty()) {
                bounds += content.get().upperBoundGrams().orElse(0);
            } else {
                measured = Optional.of(measured.map(m -> m.plus(mass.get())).orElse(mass.get()));
            }
        }
        return bounds
                + measured.map(m -> m.value() + ONE_SIDED_95 * m.standardUncertainty())
                        .orElse(0.0);
    }

    /**
     * A product over the kept layers.
     *
     * @param allGrams over all kept layers, non-detects at their limit, g
     * @param allPercent the same, % of theory
     * @param rest labels left after setting the largest apart
     * @param restGrams what they hold at most, one-sided 95 %, g
     * @param restPercent the same, % of theory
     */
    record Sum(double allGrams, double allPercent, List<String> rest, double restGrams, double restPercent) {
        Sum {
            rest = List.copyOf(rest);
        }
    }
}
