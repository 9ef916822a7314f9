package workuptally.tally.amounts;

import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Lot;
import workuptally.model.SubstanceName;

/**
 * A weighed lot, or one of the products of a lot that holds several: their rows share label and net mass.
 *
 * @param lot the entry
 * @param product the product that it counts as: of several forms of one substance the one that the workup isolated
 * @param gramsPerGram grams of that product per gram of the form in this lot; 1 for the form itself
 * @param netGrams net mass, g; empty if it cannot be computed
 * @param productFraction mass fraction of product in the form of this lot, 0 to 1; empty without assay or mole ratio
 * @param basis where the fraction comes from
 * @param pureGrams product in the lot, as the form that it counts as, g
 * @param overTheoryPercent net mass over theory in the form of this lot, %: never a yield; empty for a lot that holds several products
 * @param endsWorkup true where the workup's balance ends at this lot; false for lots made from other lots
 */
public record LotTally(
        Lot lot,
        String product,
        double gramsPerGram,
        Optional<MeasuredValue> netGrams,
        Optional<MeasuredValue> productFraction,
        YieldBasis basis,
        Optional<MeasuredValue> pureGrams,
        Optional<MeasuredValue> overTheoryPercent,
        boolean endsWorkup) {
    /** True for what the workup gave, crude or solid; false for a purified lot, also where the book has no crude before it. */
    public boolean isCrude() {
        return endsWorkup && lot.stage().filter(s -> s == Lot.Stage.PURIFIED).isEmpty();
    }

    /**
     * Product in the lot at most, g: what its assay says, without one all that it weighs; empty where either cannot be computed or told as
     * the form that counts.
     */
    public Optional<MeasuredValue> atMostGrams() {
        boolean formIsKnown = gramsPerGram != 1 || lot.isOf(product);
        return pureGrams.or(() -> productFraction.isEmpty() && formIsKnown
                ? netGrams.map(net -> net.times(gramsPerGram))
                : Optional.empty());
    }

    /** A lot of a product that has one form only. */
    public LotTally(
            Lot lot,
            Optional<MeasuredValue> netGrams,
            Optional<MeasuredValue> productFraction,
            YieldBasis basis,
            Optional<MeasuredValue> pureGrams,
            Optional<MeasuredValue> overTheoryPercent,
            boolean endsWorkup) {
        this(lot, lot.product(), 1, netGrams, productFraction, basis, pureGrams, overTheoryPercent, endsWorkup);
    }

    /** True for a lot of a product of this name. */
    public boolean isOf(String name) {
        return SubstanceName.same(product(), name);
    }
}
