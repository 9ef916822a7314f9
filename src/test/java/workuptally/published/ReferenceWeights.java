package workuptally.published;

import java.util.HashMap;
import java.util.Map;
import workuptally.chemistry.AtomicMass;
import workuptally.chemistry.AtomicWeights;
import workuptally.reference.Reference;

/** Atomic weights of the reference table in the form that formulas need. */
public final class ReferenceWeights {
    private ReferenceWeights() {}

    /** The packed table. */
    public static AtomicWeights load() {
        Map<String, AtomicMass> elements = new HashMap<>();
        Reference.load()
                .atomicWeights()
                .forEach(row -> elements.put(
                        row.symbol(), new AtomicMass(row.weightGramsPerMole(), row.halfWidthGramsPerMole())));
        return AtomicWeights.of(elements);
    }
}
