package workuptally.tally.amounts;

import java.util.Optional;
import workuptally.measure.Readings;
import workuptally.model.Limits;
import workuptally.model.Lot;
import workuptally.model.Run;

/** Product fraction of a lot by the mole ratios of a spectrum alone: an upper bound, for comparison with an assay. */
public final class LotMoleRatios {
    private LotMoleRatios() {}

    /** The fraction with its standard uncertainty, both 0 to 1; empty without a mole ratio or a molar mass. */
    public static Optional<Fraction> of(Run run, Lot lot, Limits limits, Substances substances) {
        return new MoleRatios(run, new Readings(), limits, new MolarMassAccount(run, substances))
                .of(lot)
                .map(r -> new Fraction(
                        r.fraction().value(), r.fraction().standardUncertainty(), String.join(", ", r.counted())));
    }

    /**
     * A product fraction by mole ratios.
     *
     * @param value mass fraction, 0 to 1
     * @param standardUncertainty u of the fraction
     * @param counted substances that were counted
     */
    public record Fraction(double value, double standardUncertainty, String counted) {}
}
