package workuptally.judgement.layers;

import java.util.List;
import workuptally.model.Layer;
import workuptally.model.Run;
import workuptally.tally.RunTally;
import workuptally.tally.layers.LayerTally;

/** Which layers a decision is about: terminal liquids and rags that are kept. Cakes, distillates and aliquots are not. */
final class KeptLayers {
    private KeptLayers() {}

    static List<LayerTally> of(RunTally run) {
        if (run.run().status() == Run.Status.PLANNED) {
            return List.of();
        }
        return run.layers().stream().filter(KeptLayers::isKept).toList();
    }

    private static boolean isKept(LayerTally layer) {
        boolean liquid = layer.phase()
                .filter(p -> p != Layer.Phase.SOLID && p != Layer.Phase.DISTILLATE)
                .isPresent();
        boolean there = layer.entry()
                .flatMap(Layer::status)
                .map(s -> s == Layer.Status.KEPT || s == Layer.Status.RELEASED || s == Layer.Status.CONSUMED)
                .orElse(true);
        return layer.terminal()
                && liquid
                && there
                && !layer.aliquot()
                && layer.entry().isPresent();
    }
}
