package workuptally.tally.amounts;

import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Lot;

/**
 * A weighed lot, or one of the products of a lot that holds several: their rows share label and net mass.
 *
 * @param lot the entry
 * @param netGrams net mass, g; empty if it cannot be computed
 * @param productFraction mass fraction of product, 0 to 1; empty without assay or mole ratio
 * @param basis where the fraction comes from
 * @param pureGrams product in the lot, g
 * @param overTheoryPercent net mass over theory, %: never a yield; empty for a lot that holds several products
 * @param endsWorkup true where the workup's balance ends at this lot; false for lots made from other lots
 */
public record LotTally(
        Lot lot,
        Optional<MeasuredValue> netGrams,
        Optional<MeasuredValue> productFraction,
        YieldBasis basis,
        Optional<MeasuredValue> pureGrams,
        Optional<MeasuredValue> overTheoryPercent,
        boolean endsWorkup) {}
