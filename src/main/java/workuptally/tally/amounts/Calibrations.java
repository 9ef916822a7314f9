package workuptally.tally.amounts;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Assay;
import workuptally.model.Assay.Unit;
import workuptally.model.Field.Entered;

/**
 * Results of assays as measured values. Rows of one calibration rest on one reading of it with a part of their relative variance, so that
 * this part of their errors goes the same way and does not average out; the rest is their own.
 */
public final class Calibrations {
    private final Readings readings;
    private final InstrumentUncertainty uncertainty;
    private final Map<String, Shared> shared = new LinkedHashMap<>();

    public Calibrations(Readings readings, InstrumentUncertainty uncertainty) {
        this.readings = readings;
        this.uncertainty = uncertainty;
    }

    /**
     * A result in the unit of its assay.
     *
     * @param name what was read, for the budget
     */
    public MeasuredValue result(String name, Assay assay, Entered result) {
        double fraction = uncertainty.assayFraction(assay, result);
        Optional<String> calibration = fraction == 0 ? Optional.empty() : calibration(assay);
        double share = calibration.isPresent() ? uncertainty.calibrationShare() : 0;
        double degrees = InstrumentUncertainty.degreesOfFreedom(assay);
        Optional<Shared> common =
                calibration.filter(c -> share > 0).map(c -> common(c, fraction, share, degrees, assay));
        MeasuredValue own = readings.enter(
                name,
                assay.unit().map(Unit::word).orElse(""),
                result.value(),
                fraction * Math.sqrt(1 - share) * Math.abs(result.value()),
                common.map(c -> ofOwnPart(degrees, share, c.degreesOfFreedom())).orElse(degrees),
                () -> result.place().inWords());
        return common.map(c -> own.times(factor(c, fraction * Math.sqrt(share))))
                .orElse(own);
    }

    /**
     * Degrees of freedom of the part of an uncertainty that is not of its calibration, so that both parts together have those of the whole:
     * 1/ν = (1 − s)²/ν(own) + s²/ν(calibration). Dividing an estimate gives no freedom. Source: JCGM 100:2008, G.4.1.
     */
    private static double ofOwnPart(double whole, double share, double ofCalibration) {
        double left = 1 / whole - share * share / ofCalibration;
        return left > 0 ? (1 - share) * (1 - share) / left : Double.POSITIVE_INFINITY;
    }

    /** As named; without a name the results of a run by one method with external standards are taken to share one. */
    private static Optional<String> calibration(Assay assay) {
        return assay.calibration().isBlank()
                ? assay.method()
                        .filter(m -> m == Assay.Method.HPLC || m == Assay.Method.GC)
                        .map(m -> m.word() + " of the run, taken as shared")
                : Optional.of(assay.calibration());
    }

    /**
     * The one reading of a calibration; the first row that names it tells how well it is known: of few repeats both parts have the freedom
     * that gives the whole its own, ν·((1 − s)² + s²).
     */
    private Shared common(String calibration, double whole, double share, double degrees, Assay assay) {
        double fraction = whole * Math.sqrt(share);
        double ofPart = degrees * ((1 - share) * (1 - share) + share * share);
        return shared.computeIfAbsent(
                calibration,
                c -> new Shared(
                        fraction,
                        ofPart,
                        readings.enter(
                                "calibration " + c,
                                "1",
                                1,
                                fraction,
                                ofPart,
                                () -> assay.row().at("Calibration").inWords())));
    }

    /** The factor 1 with the uncertainty that a result has from its calibration, from the one reading of that calibration. */
    private MeasuredValue factor(Shared common, double fraction) {
        return common.factor()
                .minus(readings.exact(1))
                .times(fraction / common.fraction())
                .plus(readings.exact(1));
    }

    private record Shared(double fraction, double degreesOfFreedom, MeasuredValue factor) {}
}
