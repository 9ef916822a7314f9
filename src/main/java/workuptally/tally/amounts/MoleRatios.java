package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Assay;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Limits;
import workuptally.model.Lot;
import workuptally.model.Run;
import workuptally.model.SubstanceName;

/**
 * Mass fraction of product in a lot by the mole ratios of a spectrum, w = M / (M + Σ rₛ·Mₛ): an upper bound, since it misses water, salts
 * and whatever the spectrum does not show. Ratios are to the product of the lot's first row; another product of the lot, with a ratio r of
 * its own, has w = r·M / (M + Σ rₛ·Mₛ).
 */
public final class MoleRatios {
    private final Run run;
    private final Readings readings;
    private final InstrumentUncertainty uncertainty;
    private final MolarMassAccount molarMasses;

    public MoleRatios(Run run, Readings readings, Limits limits, MolarMassAccount molarMasses) {
        this.run = run;
        this.readings = readings;
        this.uncertainty = new InstrumentUncertainty(limits);
        this.molarMasses = molarMasses;
    }

    /** The fraction, 0 to 1; empty without a mole ratio or a molar mass. */
    public Optional<Ratios> of(Lot lot) {
        String main = run.lot(lot.label()).map(Lot::product).orElse(lot.product());
        OptionalDouble molarMass = molarMasses.of(main);
        if (molarMass.isEmpty()) {
            return Optional.empty();
        }
        MeasuredValue perProduct = readings.exact(molarMass.getAsDouble());
        Optional<MeasuredValue> own =
                SubstanceName.same(main, lot.product()) ? Optional.of(perProduct) : Optional.empty();
        List<String> counted = new ArrayList<>();
        for (Assay assay : run.assays()) {
            boolean ratio = assay.sample().equals(lot.label())
                    && assay.unit()
                            .filter(u -> u == Assay.Unit.MOLE_RATIO_TO_PRODUCT)
                            .isPresent();
            Optional<Entered> result = assay.result().entered().filter(MoleRatios::isNumber);
            OptionalDouble other = molarMasses.of(assay.substance());
            if (ratio && result.isPresent() && other.isPresent()) {
                MeasuredValue r = readings.enter(
                        "mole ratio of " + assay.substance() + " in lot " + lot.label(),
                        "1",
                        result.get().value(),
                        uncertainty.assayFraction(assay, result.get())
                                * result.get().value(),
                        () -> result.get().place().inWords());
                perProduct = perProduct.plus(r.times(other.getAsDouble()));
                if (assay.isOf(lot.product())) {
                    own = Optional.of(r.times(other.getAsDouble()));
                }
                counted.add(assay.substance());
            }
        }
        return counted.isEmpty() || own.isEmpty()
                ? Optional.empty()
                : Optional.of(new Ratios(own.get().over(perProduct), counted));
    }

    private static boolean isNumber(Entered result) {
        return result.qualifier() == Qualifier.EXACT || result.qualifier() == Qualifier.ABOUT;
    }

    /**
     * A product fraction by mole ratios.
     *
     * @param fraction mass fraction, 0 to 1
     * @param counted substances that were counted, in order of the table
     */
    public record Ratios(MeasuredValue fraction, List<String> counted) {
        public Ratios {
            counted = List.copyOf(counted);
        }
    }
}
