package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;
import workuptally.tally.layers.UnlabelledPhase;

/**
 * Layers of the workup that may hold product while nothing bounds it: never assayed, given by a step and never recorded, or a phase of a
 * contact that has no label at all. A product not looked for in a layer that was assayed for another is bounded by what the run lacks of
 * it, where its lots are known.
 */
public final class Undecided {
    private final Run run;
    private final List<LayerTally> layers;
    private final BecameLot becameLot;
    private final ContentBounds bounds;
    private final List<UnlabelledPhase> unlabelled;

    public Undecided(
            Run run,
            LayerGraph graph,
            List<LayerTally> layers,
            List<LotTally> lots,
            ContentBounds bounds,
            List<UnlabelledPhase> unlabelled) {
        this.run = run;
        this.layers = layers;
        this.becameLot = new BecameLot(graph, layers, lots);
        this.bounds = bounds;
        this.unlabelled = List.copyOf(unlabelled);
    }

    /** Labels of those that leave a balance over some substances undecided, whatever it lacks: nothing bounds what they hold. */
    List<String> labels(Predicate<String> counts) {
        List<String> labels = new ArrayList<>();
        for (LayerTally layer : layers) {
            // what was lost is a place where the rest can be, and no layer that could still be assayed
            if (layer.terminal()
                    && layer.endsWorkup()
                    && !layer.isLost()
                    && (isMissing(layer) || isUnbounded(layer, counts))) {
                labels.add(layer.label());
            }
        }
        unlabelled.forEach(phase -> labels.add(phase.name()));
        return labels;
    }

    /** Labels that a step gives, nothing consumes and no row records; then the names of phases without a label. */
    public List<String> missing() {
        return Stream.concat(
                        layers.stream()
                                .filter(l -> l.terminal() && l.endsWorkup() && isMissing(l))
                                .map(LayerTally::label),
                        unlabelled.stream().map(UnlabelledPhase::name))
                .toList();
    }

    /** True for a portion that a step gives, nothing consumes, and no row records. */
    private boolean isMissing(LayerTally layer) {
        // without a row only a drying cake is known for a solid: a place of product by the agent on it, and no layer
        boolean dryingCake = layer.phase().filter(p -> p == Layer.Phase.SOLID).isPresent();
        return layer.entry().isEmpty()
                && !becameLot.is(layer)
                && !dryingCake
                && !run.steps().isEmpty();
    }

    /**
     * Labels of layers that nobody assayed and that nothing but the balance itself bounds: what it lacks may be in them, and where it lacks
     * nothing they have not been shown to hold nothing.
     */
    List<String> boundedByTheBalance(Predicate<String> counts) {
        return layers.stream()
                .filter(l -> l.terminal() && l.endsWorkup() && !bounds.isAssayedForAnother(l))
                .filter(l -> unknown(l, counts)
                        .anyMatch(c -> bounds.conservationGrams(c.substance()).isPresent()))
                .map(LayerTally::label)
                .toList();
    }

    private boolean isUnbounded(LayerTally layer, Predicate<String> counts) {
        return unknown(layer, counts)
                .anyMatch(c -> bounds.conservationGrams(c.substance()).isEmpty());
    }

    private static Stream<Content> unknown(LayerTally layer, Predicate<String> counts) {
        return layer.contents().stream().filter(c -> c.kind() == Content.Kind.UNKNOWN && counts.test(c.substance()));
    }
}
