package workuptally.tally.containers;

import java.util.List;
import java.util.Map;
import workuptally.model.Transfer;
import workuptally.tally.amounts.Masses;

/**
 * What a transfer brings into a container.
 *
 * @param transfer the transfer, proposed or done
 * @param grams mass of each component by full name, g
 * @param millilitres volume, mL
 * @param sourceGrams mass of the layers it names, g; 0 for a free material
 * @param unweighed labels of those layers that were not weighed, whose mass is an estimate or not known; a free material without an amount
 */
public record ContainerAddition(
        Transfer transfer, Map<String, Double> grams, double millilitres, double sourceGrams, List<String> unweighed) {
    /** Copies the map in its order. */
    public ContainerAddition {
        grams = Masses.copyOf(grams);
        unweighed = List.copyOf(unweighed);
    }

    /** Mass, g. */
    public double totalGrams() {
        return grams.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** True where nothing tells how much it is, which is not zero. */
    public boolean isUnknown() {
        return !unweighed.isEmpty() && totalGrams() == 0;
    }

    /** The source in words: {@code R26-050 A1a+A1b}, or the free material. */
    public String source() {
        return transfer.layers().isEmpty()
                ? transfer.material()
                : transfer.run() + " " + String.join("+", transfer.layers());
    }
}
