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
import workuptally.tally.balance.CompositeSample;
import workuptally.tally.balance.CompositeSamples;
import workuptally.tally.layers.LayerTally;

/**
 * What the kept layers of a run hold together, per product: the 95 % quantile of their sum, Σ m with its one-sided reach ({@link MeasuredValue#oneSidedReach()}), non-detects and other bounds
 * at their limit, and never less than its largest part. What was not found can be in one layer only, so layers bounded by conservation count
 * once, together.
 *
 * <p>Layers that fail the limit on their own are set apart first; then the largest of the rest, until what is left fits the run's limit.
 * Only layers that were measured are set apart as larger than another one. A layer that was not measured, or of which only a bound is known,
 * counts beside each other one, at most at the size of that one: it may hold as little, so that a reading that is worse or gone never lets
 * another layer pass.
 * Layers of a composite sample that have no assay of their own are one share: what they hold together stands or is set apart as a whole.
 * Liquors of a purification belong to another balance and are not summed.
 */
final class SumOfLayers {
    private final Limits limits;
    private final CompositeSamples composites;
    private final List<LayerTally> layers;
    private final Map<String, Sum> sums = new LinkedHashMap<>();
    private final Map<String, Set<String>> heldBySum = new LinkedHashMap<>();

    private SumOfLayers(Limits limits, CompositeSamples composites, List<LayerTally> layers) {
        this.limits = limits;
        this.composites = composites;
        this.layers = layers;
    }

    static SumOfLayers of(RunTally run, Limits limits) {
        SumOfLayers result = new SumOfLayers(limits, run.evidence().composites(), run.layers());
        List<LayerTally> kept =
                KeptLayers.of(run).stream().filter(LayerTally::endsWorkup).toList();
        run.theory().ifPresent(t -> t.products().forEach(p -> result.judge(p, kept)));
        return result;
    }

    /** The sum over all kept layers, and what is left after setting the largest apart. */
    Optional<Sum> sum(String product) {
        return Optional.ofNullable(sums.get(product));
    }

    /** True where the layer was set apart so that the rest fits the limit of that product. */
    boolean isSetApart(String layer, String product) {
        return heldBySum.getOrDefault(product, Set.of()).contains(layer);
    }

    private void judge(ProductTheory product, List<LayerTally> kept) {
        String name = product.product().name();
        double theory = product.massGrams().value();
        double runLimit = limits.value(Limit.RUN_LIMIT) / 100 * theory;
        double layerLimit = limits.value(Limit.LAYER_LIMIT) / 100 * theory;
        List<Share> shares = shares(kept, name);
        List<Share> holding = shares.stream().filter(Share::isBounded).toList();
        List<Share> rest = new ArrayList<>();
        double most = 0;
        for (Share share : holding) {
            double together = besideOthers(share, shares, layerLimit);
            if (guarded(List.of(share)) > layerLimit || together > runLimit) {
                heldBySum.computeIfAbsent(name, n -> new LinkedHashSet<>()).addAll(share.labels());
            } else {
                rest.add(share);
                most = Math.max(most, together);
            }
        }
        double all = guarded(holding);
        sums.put(
                name,
                new Sum(
                        all,
                        100 * all / theory,
                        rest.stream().flatMap(s -> s.labels().stream()).toList(),
                        most,
                        100 * most / theory));
    }

    /** What each layer holds; layers without an assay of their own that a composite sample tells of stand together. */
    private List<Share> shares(List<LayerTally> kept, String product) {
        List<Share> shares = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (LayerTally layer : kept) {
            Optional<CompositeSample> sample =
                    composites.of(layer.label(), product).filter(s -> isByComposite(layer, product));
            if (sample.isEmpty()) {
                shares.add(new Share(List.of(layer.label()), content(layer, product), false));
            } else if (told.add(sample.get().name())) {
                shares.add(together(sample.get(), kept, product));
            }
        }
        return shares;
    }

    private static boolean isByComposite(LayerTally layer, String product) {
        return content(layer, product)
                .filter(c -> c.massGrams().isEmpty())
                .filter(c ->
                        c.rests() == Content.Rests.COMPOSITE_SAMPLE || c.rests() == Content.Rests.DISPUTED_READINGS)
                .isPresent();
    }

    /** The kept layers of which this sample, of all that tell of them, tells most. */
    private Share together(CompositeSample sample, List<LayerTally> kept, String product) {
        List<String> labels = kept.stream()
                .filter(l -> isByComposite(l, product))
                .map(LayerTally::label)
                .filter(l -> composites.of(l, product).filter(s -> s == sample).isPresent())
                .toList();
        return new Share(labels, Optional.of(composites.ofParts(sample, labels, layers)), true);
    }

    /** What a layer and those that are not set apart before it hold together, g. */
    private static double besideOthers(Share share, List<Share> all, double layerLimit) {
        double own = guarded(List.of(share));
        Optional<Double> ownMeasured = share.measured();
        boolean conserved = share.isConserved();
        List<Share> counted = new ArrayList<>(List.of(share));
        int atOwnSize = 0;
        for (Share other : all) {
            Optional<Double> measured = other.measured();
            if (other == share
                    || conserved && other.isConserved()
                    || measured.filter(m -> m > layerLimit).isPresent()) {
                continue;
            }
            if (measured.isPresent()) {
                if (measured.get() <= ownMeasured.orElse(own)) {
                    counted.add(other);
                } else if (ownMeasured.isEmpty()) {
                    atOwnSize++;
                }
            } else if (other.isBounded() && !other.isConserved() && guarded(List.of(other)) <= own) {
                counted.add(other);
            } else {
                atOwnSize++;
            }
        }
        return guarded(counted) + atOwnSize * own;
    }

    private static Optional<Content> content(LayerTally layer, String product) {
        return layer.contents().stream()
                .filter(c -> c.isOf(product))
                .filter(LayerEvidence::isBounded)
                .findFirst();
    }

    /** What one layer holds at most, g. */
    static double guarded(LayerTally layer, String product) {
        return guarded(List.of(new Share(List.of(layer.label()), content(layer, product), false)));
    }

    /**
     * Measured contents as their sum plus its one-sided reach, bounds at their limit, g; at least the largest bound of one of them, and at most
     * all their bounds, of which a composite sample can be the lower one.
     */
    private static double guarded(List<Share> shares) {
        double bounds = shares.stream()
                .filter(Share::isConserved)
                .mapToDouble(Share::atMostGrams)
                .max()
                .orElse(0);
        double largest = bounds;
        double each = bounds;
        Optional<MeasuredValue> measured = Optional.empty();
        for (Share share : shares) {
            if (!share.isBounded() || share.isConserved()) {
                continue;
            }
            Content content = share.content().orElseThrow();
            Optional<MeasuredValue> mass = content.massGrams();
            largest = Math.max(largest, share.atMostGrams());
            each += share.atMostGrams();
            if (content.kind() == Content.Kind.BOUND || mass.isEmpty()) {
                bounds += share.atMostGrams();
            } else {
                measured = Optional.of(measured.map(m -> m.plus(mass.get())).orElse(mass.get()));
            }
        }
        double quantile = measured.map(m -> m.value() + m.oneSidedReach()).orElse(0.0);
        return Math.max(largest, Math.min(each, bounds + quantile));
    }

    /**
     * What a layer holds of a product, or several layers of one composite sample together.
     *
     * @param labels labels of the layers
     * @param content what they hold; empty where nothing bounds it
     * @param ofSeveral true where only a composite sample tells it
     */
    private record Share(List<String> labels, Optional<Content> content, boolean ofSeveral) {
        boolean isBounded() {
            return content.isPresent();
        }

        /** What was not found can be in one of such layers only. */
        boolean isConserved() {
            return content.filter(Content::isBoundedByConservation).isPresent();
        }

        double atMostGrams() {
            return content.map(c -> c.upperBoundGrams().orElse(0)).orElse(0.0);
        }

        /** Undisputed result of the layer itself, g; empty where only a bound is known, or what it holds together with others. */
        Optional<Double> measured() {
            return content.filter(c -> !ofSeveral && c.kind() == Content.Kind.MEASURED && c.isOwnEvidence())
                    .flatMap(Content::massGrams)
                    .map(MeasuredValue::value);
        }
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
