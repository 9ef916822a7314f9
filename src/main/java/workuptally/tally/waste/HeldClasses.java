package workuptally.tally.waste;

import java.util.Map;
import workuptally.model.Layer;

/** What the rules for waste streams are told of the materials in a layer. */
public interface HeldClasses {
    /** The class of a heavy metal in the reference data. */
    String HEAVY_METAL = "heavy-metal";

    /**
     * Material classes that a layer may still hold, each with the material that brings it, in a fixed order.
     *
     * @param label label of the layer
     * @param phase its phase
     */
    Map<String, String> in(String label, Layer.Phase phase);
}
