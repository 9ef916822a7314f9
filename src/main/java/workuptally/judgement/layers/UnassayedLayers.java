package workuptally.judgement.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.measure.MeasuredValue;
import workuptally.model.Assay;
import workuptally.model.Layer;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.Product;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.MethodSight;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory.ProductTheory;
import workuptally.tally.balance.CompositeSample;
import workuptally.tally.balance.Pooling;
import workuptally.tally.layers.LayerTally;

/**
 * Kept layers of a run that nobody assayed, two or more, and the composite samples that would settle them: layers whose meeting is ordinary,
 * each sample with the result it must stay below.
 *
 * <p>Of what the run may hold, all layers together, the layers that were assayed take their part first; the rest is shared evenly by the
 * samples. The method is taken to be HPLC; where its detection limit lies above the result asked for, no sample is proposed.
 *
 * @param labels the layers, in order of the steps
 * @param samples what would settle them; a sample of one layer is its assay alone
 * @param settled true where nothing else keeps any of them
 */
public record UnassayedLayers(List<String> labels, List<Sample> samples, boolean settled) {
    /** Copies the lists. */
    public UnassayedLayers {
        labels = List.copyOf(labels);
        samples = List.copyOf(samples);
    }

    /**
     * Those of a run; empty where fewer than two layers lack an assay.
     *
     * @param decisions decisions about its kept layers
     */
    public static Optional<UnassayedLayers> of(
            RunTally run, List<LayerDecision> decisions, Limits limits, Substances substances) {
        MethodSight sight = new MethodSight(run.run(), substances);
        List<LayerTally> layers = new ArrayList<>();
        boolean settled = true;
        for (LayerDecision decision : decisions) {
            Optional<LayerTally> layer = run.layer(decision.layer()).filter(l -> lacksAssay(run, l, sight));
            if (decision.outcome() != Outcome.EVIDENCE_COMPLETE && layer.isPresent() && waitsForContent(decision)) {
                layers.add(layer.get());
                settled &= decision.conditions().stream()
                        .noneMatch(c -> !c.criterion().isOfContent() && isOpen(c));
            }
        }
        if (layers.size() < 2) {
            return Optional.empty();
        }
        List<List<LayerTally>> groups = groups(run, layers, substances);
        List<Sample> samples = new ArrayList<>();
        for (List<LayerTally> group : groups) {
            sample(run, group, layers, groups.size(), limits).ifPresent(samples::add);
        }
        return Optional.of(new UnassayedLayers(
                layers.stream().map(LayerTally::label).toList(),
                samples.size() == groups.size() ? samples : List.of(),
                settled));
    }

    /** True where what it holds is what keeps it; a rag has a finding of its own. */
    private static boolean waitsForContent(LayerDecision decision) {
        return decision.conditions().stream()
                .filter(UnassayedLayers::isOpen)
                .anyMatch(c -> c.criterion().isOfContent());
    }

    /** True where nothing but what it holds keeps a layer. */
    public static boolean waitsForContentAlone(LayerDecision decision) {
        return decision.conditions().stream()
                .filter(UnassayedLayers::isOpen)
                .allMatch(c -> c.criterion().isOfContent());
    }

    /** Not met or missing, in what decides about a layer; a proposed transfer stands beside. */
    private static boolean isOpen(Condition condition) {
        return !condition.criterion().isOfTransfer()
                && (condition.state() == State.NOT_MET || condition.state() == State.MISSING);
    }

    private static boolean lacksAssay(RunTally run, LayerTally layer, MethodSight sight) {
        boolean hasRow = run.run().assays().stream()
                .filter(a -> a.method().filter(Assay.Method::isWeak).isEmpty() && sight.sees(a))
                .anyMatch(a -> a.samples().contains(layer.label())
                        && run.run()
                                .product(a.substance())
                                .filter(Product::wanted)
                                .isPresent());
        boolean liquid = layer.phase()
                .filter(p -> p == Layer.Phase.AQUEOUS || p == Layer.Phase.ORGANIC)
                .isPresent();
        return liquid
                && layer.endsWorkup()
                && !hasRow
                && LayerEvidence.wanted(layer, run).stream()
                        .noneMatch(c -> c.massGrams().isPresent() || c.isOwnEvidence());
    }

    /** Each layer joins the first group with all of which it may be mixed; one that may not be mixed, or was not followed, stays alone. */
    private static List<List<LayerTally>> groups(RunTally run, List<LayerTally> layers, Substances substances) {
        Pooling pooling = new Pooling(run.run(), run.evidence().meetings(), substances);
        List<List<LayerTally>> groups = new ArrayList<>();
        List<LayerTally> alone = new ArrayList<>();
        for (LayerTally layer : layers) {
            if (pooling.whyNot(layer).isPresent() || !pooling.isFollowed(layer)) {
                alone.add(layer);
                continue;
            }
            Optional<List<LayerTally>> group = groups.stream()
                    .filter(g -> g.stream()
                            .allMatch(l -> pooling.whyNotTogether(l.label(), layer.label())
                                    .isEmpty()))
                    .findFirst();
            if (group.isPresent()) {
                group.get().add(layer);
            } else {
                groups.add(new ArrayList<>(List.of(layer)));
            }
        }
        alone.forEach(l -> groups.add(List.of(l)));
        return groups;
    }

    private static Optional<Sample> sample(
            RunTally run, List<LayerTally> group, List<LayerTally> unassayed, int samples, Limits limits) {
        Optional<MeasuredValue> volume = CompositeSample.volumeMillilitres(group);
        List<Below> below = new ArrayList<>();
        for (ProductTheory theory : run.theory().map(t -> t.products()).orElse(List.of())) {
            if (!theory.product().wanted()) {
                continue;
            }
            double most = mostGrams(run, theory, unassayed, limits) / samples;
            if (volume.isEmpty() || most <= 0) {
                return Optional.empty();
            }
            double u = Math.hypot(
                    limits.value(Limit.ASSAY_HPLC) / 100, theory.massGrams().relativeStandardUncertainty());
            double result = CompositeSample.mustBeBelowMilligramsPerMillilitre(most, volume.get(), u);
            OptionalDouble detection = limits.optional(Limit.DETECTION_HPLC);
            if (detection.isPresent() && detection.getAsDouble() >= result) {
                return Optional.empty();
            }
            below.add(new Below(theory.product().name(), result));
        }
        return below.isEmpty()
                ? Optional.empty()
                : Optional.of(new Sample(group.stream().map(LayerTally::label).toList(), below));
    }

    /** What the layers without an assay may hold together, or one of them, g: what the assayed ones that stay leave of the run's limit. */
    private static double mostGrams(RunTally run, ProductTheory theory, List<LayerTally> unassayed, Limits limits) {
        double grams = theory.massGrams().value();
        double ofLayer = limits.value(Limit.LAYER_LIMIT) / 100 * grams;
        double ofRun = limits.value(Limit.RUN_LIMIT) / 100 * grams;
        for (LayerTally layer : KeptLayers.of(run)) {
            double other = SumOfLayers.guarded(layer, theory.product().name());
            if (layer.endsWorkup() && !unassayed.contains(layer) && other <= ofLayer) {
                ofRun -= other;
            }
        }
        return Math.min(ofLayer, ofRun);
    }

    /**
     * An assay that would settle layers.
     *
     * @param layers labels of the layers; one where they may not be mixed
     * @param below the result it must stay below, for each wanted product
     */
    public record Sample(List<String> layers, List<Below> below) {
        /** Copies the lists. */
        public Sample {
            layers = List.copyOf(layers);
            below = List.copyOf(below);
        }
    }

    /**
     * A result to stay below.
     *
     * @param product product
     * @param milligramsPerMillilitre result, mg/mL of the layers as they are
     */
    public record Below(String product, double milligramsPerMillilitre) {}
}
