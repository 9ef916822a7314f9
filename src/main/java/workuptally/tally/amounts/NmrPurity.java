package workuptally.tally.amounts;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import workuptally.model.Field;
import workuptally.model.Field.Entered;
import workuptally.model.NmrAssay;

/**
 * Mass fraction by internal-standard NMR from the raw numbers of a row: w = (Ix/Is)·(Ns/Nx)·(Mx/Ms)·(ms/m)·Ps, with I integrals, N nuclei,
 * M molar masses in g/mol, ms and m masses of standard and sample in mg, Ps purity of the standard as a fraction.
 *
 * <p>Valid for fully relaxed spectra with resolved signals.
 */
public final class NmrPurity {
    private NmrPurity() {}

    /**
     * The fraction, 0 to 1 and a little above by error of measurement.
     *
     * @param molarMassGramsPerMole molar mass of the substance
     * @return empty where an entry is missing, unreadable or not above 0
     */
    public static OptionalDouble fraction(NmrAssay assay, double molarMassGramsPerMole) {
        double substance = number(assay.substanceIntegral()) / number(assay.substanceNuclei());
        double standard = number(assay.standardIntegral()) / number(assay.standardNuclei());
        double masses = number(assay.standardMassMilligrams()) / number(assay.sampleMassMilligrams());
        double molarMasses = molarMassGramsPerMole / number(assay.standardMolarMassGramsPerMole());
        double fraction = substance / standard * molarMasses * masses * number(assay.standardPurityPercent()) / 100;
        return DoubleStream.of(fraction)
                .filter(f -> f > 0 && Double.isFinite(f))
                .findFirst();
    }

    /** The number, or NaN, which makes the whole product NaN. */
    private static double number(Field field) {
        return field.entered().map(Entered::value).filter(v -> v > 0).orElse(Double.NaN);
    }
}
