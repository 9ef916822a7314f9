package workuptally.tally.layers;

import java.util.Optional;
import workuptally.model.Layer;

/**
 * Densities expected at a contact.
 *
 * @param organic of the organic phase
 * @param aqueous of the aqueous phase
 */
public record PhaseDensities(LayerIdentity.Expected organic, LayerIdentity.Expected aqueous) {
    /** The phase expected below; empty where the two overlap. */
    public Optional<Layer.Phase> lower() {
        return LayerIdentity.lower(organic, aqueous);
    }
}
