package workuptally.judgement.layers;

import java.util.List;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/**
 * Which layers a decision is about: terminal liquids and rags that are there, also those to reuse, and a distillate in which a wanted product
 * was measured, or can be and was not looked for. Cakes, other distillates and aliquots are not, nor what is lost.
 */
final class KeptLayers {
    private KeptLayers() {}

    static List<LayerTally> of(RunTally run) {
        if (run.run().status() == Run.Status.PLANNED) {
            return List.of();
        }
        return run.layers().stream().filter(l -> isKept(run, l)).toList();
    }

    private static boolean isKept(RunTally run, LayerTally layer) {
        boolean liquid = layer.phase()
                .filter(p -> p != Layer.Phase.SOLID && p != Layer.Phase.DISTILLATE)
                .isPresent();
        boolean there = layer.entry()
                .flatMap(l -> l.custody().status())
                .map(s -> s == Layer.Status.KEPT
                        || s == Layer.Status.TO_REUSE
                        || s == Layer.Status.RELEASED
                        || s == Layer.Status.CONSUMED)
                .orElse(true);
        return layer.terminal()
                && (liquid || holdsProduct(run, layer))
                && there
                && !layer.aliquot()
                && layer.entry().isPresent();
    }

    private static boolean holdsProduct(RunTally run, LayerTally layer) {
        return layer.phase().filter(p -> p == Layer.Phase.DISTILLATE).isPresent()
                && LayerEvidence.wanted(layer, run).stream()
                        .anyMatch(c -> c.kind() == Content.Kind.MEASURED
                                || c.massGrams().isEmpty());
    }
}
