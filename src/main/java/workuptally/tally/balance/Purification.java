package workuptally.tally.balance;

import java.util.List;
import java.util.Set;
import workuptally.measure.MeasuredValue;

/**
 * A purification's own balance of one product: what was in the lots that were purified, and what of it was found in the lots made from
 * them and in the liquors and fractions beside these.
 *
 * @param sources labels of the lots that were purified
 * @param product name of the product
 * @param inGrams product in them, g
 * @param foundGrams product found in lots and portions made from them, g
 * @param boundedGrams what portions below a bound can hold beside that, g
 * @param portions labels of liquors and fractions that have a row or a step
 * @param unknown labels of lots and portions of which nothing tells what they hold
 */
public record Purification(
        Set<String> sources,
        String product,
        MeasuredValue inGrams,
        MeasuredValue foundGrams,
        double boundedGrams,
        List<String> portions,
        List<String> unknown) {
    /** Copies the lists. */
    public Purification {
        portions = List.copyOf(portions);
        unknown = List.copyOf(unknown);
    }

    /** What was not found, g; below 0 where more was found than there was. */
    public MeasuredValue missingGrams() {
        return inGrams.minus(foundGrams);
    }

    /** What was not found, at its lower one-sided 95 % bound, less what bounded portions can hold, % of what was purified. */
    public double missingAtLeastPercent() {
        MeasuredValue missing = missingGrams();
        return 100 * (missing.value() - missing.oneSidedReach() - boundedGrams) / inGrams.value();
    }

    /** True where something of which nobody knows what it holds can be where the rest is. */
    public boolean isOpen() {
        return !unknown.isEmpty();
    }

    /** True for a portion of this purification. */
    public boolean holds(String label) {
        return portions.contains(label);
    }
}
