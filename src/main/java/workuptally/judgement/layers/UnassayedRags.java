package workuptally.judgement.layers;

import java.util.List;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Content;
import workuptally.tally.layers.LayerTally;

/** Rag and middle layers that end in a run without an assay for the product: no clear layer tells what such a one holds. */
public final class UnassayedRags {
    private UnassayedRags() {}

    /** Those of a run, in order of its layers; each has a row of its own in the Layers table. */
    public static List<LayerTally> of(RunTally tally) {
        return tally.layers().stream()
                .filter(layer ->
                        layer.terminal() && layer.entry().isPresent() && isRag(layer) && !isAssayed(tally, layer))
                .toList();
    }

    /** True for a layer called rag, and for the middle one of three. */
    public static boolean isRag(LayerTally layer) {
        return layer.phase().filter(p -> p == Layer.Phase.RAG).isPresent()
                || layer.entry()
                        .flatMap(Layer::position)
                        .filter(p -> p == Layer.Position.MIDDLE)
                        .isPresent();
    }

    private static boolean isAssayed(RunTally tally, LayerTally layer) {
        return layer.contents().stream()
                .filter(c -> tally.run()
                        .product(c.substance())
                        .filter(Product::wanted)
                        .isPresent())
                .anyMatch(Content::isOwnEvidence);
    }
}
