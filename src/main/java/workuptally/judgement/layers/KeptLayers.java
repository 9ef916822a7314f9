package workuptally.judgement.layers;

import java.util.List;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/**
 * Which layers a decision is about: terminal liquids and rags that are there, also those to reuse, what has no phase recorded, a solid that
 * was assayed for a wanted product, and a distillate in which one was, or can be and was not looked for. Other cakes and distillates and
 * aliquots are not, nor what is lost or went into another run.
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
        // a phase that nobody wrote down must not let the layer out of sight
        boolean liquid = layer.phase()
                .filter(p -> p == Layer.Phase.SOLID || p == Layer.Phase.DISTILLATE)
                .isEmpty();
        boolean there = layer.entry()
                .flatMap(l -> l.custody().status())
                .map(s -> s == Layer.Status.KEPT
                        || s == Layer.Status.TO_REUSE
                        || s == Layer.Status.RELEASED
                        || s == Layer.Status.CONSUMED
                        || s == Layer.Status.USED_UP)
                .orElse(true);
        return layer.terminal()
                && (liquid || holdsProduct(run, layer))
                && there
                && !layer.aliquot()
                && layer.entry().filter(l -> !l.isTakenIntoAnotherRun()).isPresent();
    }

    /** A distillate that may hold product, or a solid that was assayed for one, whether a mass came of the assay or not. */
    private static boolean holdsProduct(RunTally run, LayerTally layer) {
        if (layer.phase().filter(p -> p == Layer.Phase.SOLID).isPresent()) {
            return run.run().assays().stream()
                    .filter(a -> a.sample().equals(layer.label()))
                    .anyMatch(a -> run.run()
                            .product(a.substance())
                            .filter(Product::wanted)
                            .isPresent());
        }
        return LayerEvidence.wanted(layer, run).stream()
                .anyMatch(
                        c -> c.kind() == Content.Kind.MEASURED || c.massGrams().isEmpty());
    }
}
