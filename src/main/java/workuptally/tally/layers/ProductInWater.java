package workuptally.tally.layers;

import java.util.List;
import java.util.Optional;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Layer;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.amounts.Content;

/** Aqueous layers of the workup in which a wanted product was measured. */
public final class ProductInWater {
    private ProductInWater() {}

    /** Measured contents of wanted products in a terminal aqueous layer with a volume; empty for any other layer. */
    public static List<Content> of(LayerTally layer, Run run) {
        boolean aqueous = layer.phase().filter(p -> p == Layer.Phase.AQUEOUS).isPresent();
        if (!layer.terminal()
                || !layer.endsWorkup()
                || !aqueous
                || layer.aliquot()
                || layer.volumeMillilitres().isEmpty()) {
            return List.of();
        }
        return layer.contents().stream()
                .filter(c -> c.kind() == Content.Kind.MEASURED && c.massGrams().isPresent())
                .filter(c -> run.product(c.substance()).filter(Product::wanted).isPresent())
                .toList();
    }

    /** The pH recorded for a layer. */
    public static Optional<Entered> pH(LayerTally layer) {
        return layer.entry().map(Layer::pH).flatMap(Field::entered);
    }
}
