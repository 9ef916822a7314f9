package workuptally.tally.amounts;

import java.util.List;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.Limit;
import workuptally.model.Limits;
import workuptally.model.NmrAssay;

/**
 * Mass fraction by internal-standard NMR from the raw numbers of a row: w = (Ix/Is)·(Ns/Nx)·(Mx/Ms)·(ms/m)·Ps, with I integrals, N nuclei,
 * M molar masses in g/mol, ms and m masses of standard and sample in mg, Ps purity of the standard as a fraction.
 *
 * <p>Valid for fully relaxed spectra with resolved signals.
 */
public final class NmrPurity {
    private final Readings readings;
    private final Limits limits;

    /** With the settings in force. */
    public NmrPurity(Readings readings, Limits limits) {
        this.readings = readings;
        this.limits = limits;
    }

    /**
     * The fraction, 0 to 1 and a little above by error of measurement. Its relative uncertainty is that stated, or of the method, for the
     * spectrum and the standard, and beside it that of both weighings.
     *
     * @param molarMassGramsPerMole molar mass of the substance
     * @return empty where an entry is missing, unreadable or not above 0
     */
    public Optional<MeasuredValue> fraction(NmrAssay assay, double molarMassGramsPerMole) {
        double substance = number(assay.substanceIntegral()) / number(assay.substanceNuclei());
        double standard = number(assay.standardIntegral()) / number(assay.standardNuclei());
        double molarMasses = molarMassGramsPerMole / number(assay.standardMolarMassGramsPerMole());
        double ratio = substance / standard * molarMasses * number(assay.standardPurityPercent()) / 100;
        double standardMass = number(assay.standardMassMilligrams());
        double sampleMass = number(assay.sampleMassMilligrams());
        if (!(ratio * standardMass / sampleMass > 0)) {
            return Optional.empty();
        }
        double relative = new InstrumentUncertainty(limits)
                .statedFraction(assay.relativeStandardUncertaintyPercent(), Limit.ASSAY_QNMR);
        for (Field typed : List.of(
                assay.substanceIntegral(),
                assay.standardIntegral(),
                assay.standardPurityPercent(),
                assay.standardMassMilligrams(),
                assay.sampleMassMilligrams())) {
            relative = InstrumentUncertainty.widenedBySpan(typed.entered().orElseThrow(), relative);
        }
        double spectrumFraction = relative;
        MeasuredValue spectrum = readings.enter(
                "internal-standard NMR of " + assay.sample(),
                "1",
                ratio,
                spectrumFraction * ratio,
                () -> assay.row().at("Substance integral").inWords());
        return Optional.of(
                spectrum.times(weighing(assay, ("standard " + assay.standard()).strip(), standardMass, "Standard mass"))
                        .over(weighing(assay, "sample", sampleMass, "Sample mass")));
    }

    private MeasuredValue weighing(NmrAssay assay, String what, double milligrams, String heading) {
        return readings.enter(
                "mass of the " + what + " for the NMR of " + assay.sample(),
                "mg",
                milligrams,
                limits.value(Limit.NMR_WEIGHING),
                () -> assay.row().at(heading).inWords());
    }

    /** The number, or NaN, which makes the whole product NaN. */
    private static double number(Field field) {
        return field.entered().map(Entered::value).filter(v -> v > 0).orElse(Double.NaN);
    }
}
