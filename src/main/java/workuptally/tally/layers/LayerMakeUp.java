package workuptally.tally.layers;

import java.util.List;
import java.util.Map;
import workuptally.tally.amounts.Masses;

/**
 * What a terminal layer is made of by full names: measured contents, and solvents, water and salts carried along the steps. An estimate
 * where the layer has no stated composition; never data.
 *
 * @param layer label
 * @param grams mass of each component, g, the largest first; together the layer's mass
 * @param millilitres volume, mL: as measured, else the sum of its liquids
 * @param stated true where the book states the composition
 * @param mismatches solvents of which its stated composition and what its step took tell different things
 * @param weighed false where the mass is an estimate by the volume, or by what went in
 */
public record LayerMakeUp(
        String layer,
        Map<String, Double> grams,
        double millilitres,
        boolean stated,
        List<SolventMismatch> mismatches,
        boolean weighed) {
    /** Copies the map in its order, and the lists. */
    public LayerMakeUp {
        grams = Masses.copyOf(grams);
        mismatches = List.copyOf(mismatches);
    }

    /** Mass of all components, g. */
    public double totalGrams() {
        return grams.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
