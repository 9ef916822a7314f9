package workuptally.tally.amounts;

import java.util.List;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Product;
import workuptally.model.SubstanceName;

/**
 * Yield of one product at one stage.
 *
 * @param product the product
 * @param stage {@code workup} for what the workup gave, {@code purified} for crops and purified lots
 * @param endsWorkup true where the workup's balance ends at these lots, purified ones too where no crude was entered; false where they
 *     stand beside those
 * @param lots labels of the lots that were added
 * @param massGrams product found, g
 * @param percent yield, %
 * @param percentOf what it is a percentage of
 * @param basis what it rests on
 * @param conversionAdjustedPercent yield over conversion, %, beside the yield and never instead of it
 * @param aliquotCorrectedPercent yield with the aliquots that were taken put back, %
 * @param headline true for the one yield of the product that is reported first and counts in means
 */
public record ProductYield(
        Product product,
        Stage stage,
        boolean endsWorkup,
        List<String> lots,
        MeasuredValue massGrams,
        MeasuredValue percent,
        PercentOf percentOf,
        YieldBasis basis,
        Optional<MeasuredValue> conversionAdjustedPercent,
        Optional<MeasuredValue> aliquotCorrectedPercent,
        boolean headline) {
    /** Copies the list. */
    public ProductYield {
        lots = List.copyOf(lots);
    }

    /** No assay is so coarse that it excuses more than this, %: a slip of a unit widens the uncertainty with the value (common practice). */
    public static final double MOST_PERCENT = 150;

    /** True above 100 % by more than its expanded uncertainty, or beyond all: something that it rests on is wrong. */
    public boolean isAboveAll(double coverageFactor) {
        return percent.value() > Math.min(MOST_PERCENT, 100 + percent.expandedUncertainty(coverageFactor));
    }

    /** A yield that heads its product where it is that of the workup. */
    public ProductYield(
            Product product,
            Stage stage,
            boolean endsWorkup,
            List<String> lots,
            MeasuredValue massGrams,
            MeasuredValue percent,
            PercentOf percentOf,
            YieldBasis basis,
            Optional<MeasuredValue> conversionAdjustedPercent,
            Optional<MeasuredValue> aliquotCorrectedPercent) {
        this(
                product,
                stage,
                endsWorkup,
                lots,
                massGrams,
                percent,
                percentOf,
                basis,
                conversionAdjustedPercent,
                aliquotCorrectedPercent,
                endsWorkup);
    }

    /** The same, reported first or not. */
    public ProductYield headline(boolean first) {
        return new ProductYield(
                product,
                stage,
                endsWorkup,
                lots,
                massGrams,
                percent,
                percentOf,
                basis,
                conversionAdjustedPercent,
                aliquotCorrectedPercent,
                first);
    }

    /** True for the yield of a product of this name. */
    public boolean isOf(String name) {
        return SubstanceName.same(product.name(), name);
    }

    /** Where in the work the yield is taken. */
    public enum Stage {
        /** At the end of the workup: the crude, or the dried solid. */
        WORKUP,
        /** After purification; beside one of the workup never added to it. */
        PURIFIED
    }

    /** The base of the percentage. */
    public enum PercentOf {
        /** Theory by the limiting reagent. */
        THEORY,
        /** Mass or amount charged. */
        CHARGED
    }
}
