package workuptally.tally.balance;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.measure.MeasuredValue;

/**
 * A purification's own balance of one product: what was in the lots that were purified, and what of it was found in the lots made from
 * them and in the liquors and fractions beside these.
 *
 * @param sources labels of the lots that were purified
 * @param made labels of the lots made from them whose product is known, if only as all that they weigh
 * @param product name of the product
 * @param inGrams product in what was purified, g
 * @param inIsAtMost true where a lot that was purified has no assay, so that its whole mass stands in {@code inGrams}
 * @param foundGrams product found in lots and portions made from them, g
 * @param assayedGrams the part of it that assays show, g; less than that where a lot has none
 * @param boundedGrams what portions below a bound can hold beside that, g
 * @param portions labels of liquors and fractions that have a row or a step
 * @param unknown labels of lots and portions of which nothing tells what they hold
 * @param unknownAtMostGrams what these weigh in all, g; infinite where one of them was not weighed
 */
public record Purification(
        Set<String> sources,
        List<String> made,
        String product,
        MeasuredValue inGrams,
        boolean inIsAtMost,
        MeasuredValue foundGrams,
        Optional<MeasuredValue> assayedGrams,
        double boundedGrams,
        List<String> portions,
        List<String> unknown,
        double unknownAtMostGrams) {
    /** Copies the lists. */
    public Purification {
        made = List.copyOf(made);
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

    /** What has no place, % of what was purified, even where the portions and lots of which nothing tells were product alone. */
    public double withoutPlaceAtLeastPercent() {
        return missingAtLeastPercent() - 100 * unknownAtMostGrams / inGrams.value();
    }

    /** True where something of which nobody knows what it holds can be where the rest is, or where nobody knows what there was. */
    public boolean isOpen() {
        return inIsAtMost || !unknown.isEmpty();
    }

    /** True where more was found than there was, by more than the expanded uncertainty of the difference: some reading is wrong. */
    public boolean gains(double coverageFactor) {
        return isMore(foundGrams, coverageFactor);
    }

    /** The same by assays alone: a lot without one may be wet, and says nothing against what it was made from. */
    public boolean gainsByAssay(double coverageFactor) {
        return assayedGrams.filter(found -> isMore(found, coverageFactor)).isPresent();
    }

    private boolean isMore(MeasuredValue found, double coverageFactor) {
        MeasuredValue gain = found.minus(inGrams);
        return gain.value() > gain.expandedUncertainty(coverageFactor);
    }

    /** True for a portion of this purification. */
    public boolean holds(String label) {
        return portions.contains(label);
    }
}
