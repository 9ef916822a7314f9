package workuptally.tally;

import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.model.Assay;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Lot;
import workuptally.model.Run;

/** Product fraction of a lot by the mole ratios of a spectrum alone, w = M / (M + Σ rₛ·Mₛ): an upper bound, for comparison with an assay. */
public final class LotMoleRatios {
    private LotMoleRatios() {}

    /** The fraction with its relative standard uncertainty, both 0 to 1; empty without a mole ratio or a molar mass. */
    public static Optional<Fraction> of(Run run, Lot lot, Substances substances) {
        MolarMasses molarMasses = new MolarMasses(run, substances);
        OptionalDouble product = molarMasses.of(lot.product());
        if (product.isEmpty()) {
            return Optional.empty();
        }
        double others = 0;
        double variance = 0;
        StringBuilder named = new StringBuilder();
        for (Assay assay : run.assays()) {
            boolean ratio = assay.sample().equals(lot.label())
                    && assay.unit()
                            .filter(u -> u == Assay.Unit.MOLE_RATIO_TO_PRODUCT)
                            .isPresent();
            OptionalDouble molarMass = molarMasses.of(assay.substance());
            Optional<Entered> result = assay.result().entered().filter(e -> e.qualifier() == Qualifier.EXACT);
            if (ratio && molarMass.isPresent() && result.isPresent()) {
                double grams = result.get().value() * molarMass.getAsDouble();
                double relative = assay.relativeStandardUncertaintyPercent()
                                .entered()
                                .map(Entered::value)
                                .orElse(ROUTINE_PERCENT)
                        / 100;
                others += grams;
                variance += Math.pow(grams * relative, 2);
                named.append(named.length() == 0 ? "" : ", ").append(assay.substance());
            }
        }
        if (named.length() == 0) {
            return Optional.empty();
        }
        double all = product.getAsDouble() + others;
        return Optional.of(new Fraction(
                product.getAsDouble() / all,
                product.getAsDouble() / all * Math.sqrt(variance) / all,
                named.toString()));
    }

    /** Relative standard uncertainty of a ratio from a routine spectrum, %; common practice. */
    private static final double ROUTINE_PERCENT = 5;

    /**
     * A product fraction by mole ratios.
     *
     * @param value mass fraction, 0 to 1
     * @param standardUncertainty u of the fraction
     * @param counted substances that were counted
     */
    public record Fraction(double value, double standardUncertainty, String counted) {}
}
