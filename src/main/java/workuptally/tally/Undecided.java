package workuptally.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import workuptally.model.Layer;
import workuptally.model.Run;

/** Layers of the workup that may hold product while nothing bounds it: never assayed, or given by a step and never recorded. */
final class Undecided {
    private final Run run;
    private final LayerGraph graph;
    private final List<LayerTally> layers;
    private final List<LotTally> lots;

    Undecided(Run run, LayerGraph graph, List<LayerTally> layers, List<LotTally> lots) {
        this.run = run;
        this.graph = graph;
        this.layers = layers;
        this.lots = lots;
    }

    /** Their labels. */
    List<String> labels() {
        List<String> labels = new ArrayList<>();
        for (LayerTally layer : layers) {
            if (layer.terminal() && layer.endsWorkup() && (isMissing(layer) || isUnbounded(layer))) {
                labels.add(layer.label());
            }
        }
        return labels;
    }

    /** True for a portion that a step gives, nothing consumes, and no row records. */
    boolean isMissing(LayerTally layer) {
        boolean lotOfUnstatedOrigin = lots.stream()
                .anyMatch(l -> l.lot().from().isEmpty()
                        && graph.givenBy(l.lot().label()).isEmpty());
        boolean becameThatLot = lotOfUnstatedOrigin
                && layer.phase().filter(p -> p == Layer.Phase.ORGANIC).isPresent();
        return layer.entry().isEmpty() && !becameThatLot && !run.steps().isEmpty();
    }

    private boolean isUnbounded(LayerTally layer) {
        boolean unknown = layer.contents().stream().anyMatch(c -> c.kind() == Content.Kind.UNKNOWN);
        return unknown && mixedBoundGrams(layer).isEmpty();
    }

    /**
     * Bound (e) for a rag or mixed layer: its volume times the strongest solution measured in an organic or aqueous portion of the run,
     * one-sided 95 %.
     */
    Optional<Double> mixedBoundGrams(LayerTally layer) {
        if (layer.phase().filter(p -> p == Layer.Phase.RAG).isEmpty()
                || layer.volumeMillilitres().isEmpty()) {
            return Optional.empty();
        }
        double strongest = 0;
        for (LayerTally other : layers) {
            boolean liquid = other.phase()
                    .filter(p -> p == Layer.Phase.ORGANIC || p == Layer.Phase.AQUEOUS)
                    .isPresent();
            for (Content content : other.contents()) {
                boolean wanted =
                        run.product(content.substance()).filter(p -> p.wanted()).isPresent();
                if (liquid
                        && wanted
                        && content.massGrams().isPresent()
                        && other.volumeMillilitres().isPresent()) {
                    strongest = Math.max(
                            strongest,
                            content.massGrams().get().value()
                                    / other.volumeMillilitres().get().value());
                }
            }
        }
        double volume = layer.volumeMillilitres().get().value();
        double relative = layer.volumeMillilitres().get().relativeStandardUncertainty();
        return strongest == 0
                ? Optional.empty()
                : Optional.of(strongest * volume * (1 + Contents.ONE_SIDED_95 * relative));
    }
}
