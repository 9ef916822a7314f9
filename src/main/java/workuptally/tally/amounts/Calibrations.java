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
        MeasuredValue own = readings.enter(
                name,
                assay.unit().map(Unit::word).orElse(""),
                result.value(),
                fraction * Math.sqrt(1 - share) * Math.abs(result.value()),
                InstrumentUncertainty.degreesOfFreedom(assay),
                () -> result.place().inWords());
        return share == 0 ? own : own.times(factor(calibration.orElseThrow(), fraction * Math.sqrt(share), assay));
    }

    /** As named; without a name the results of a run by one method with external standards are taken to share one. */
    private static Optional<String> calibration(Assay assay) {
        return assay.calibration().isBlank()
                ? assay.method()
                        .filter(m -> m == Assay.Method.HPLC || m == Assay.Method.GC)
                        .map(m -> m.word() + " of the run, taken as shared")
                : Optional.of(assay.calibration());
    }

    /** The factor 1 with the uncertainty that a result has from its calibration, from the one reading of that calibration. */
    private MeasuredValue factor(String calibration, double fraction, Assay assay) {
        Shared common = shared.computeIfAbsent(
                calibration,
                c -> new Shared(
                        fraction,
                        readings.enter(
                                "calibration " + c,
                                "1",
                                1,
                                fraction,
                                () -> assay.row().at("Calibration").inWords())));
        return common.factor()
                .minus(readings.exact(1))
                .times(fraction / common.fraction())
                .plus(readings.exact(1));
    }

    private record Shared(double fraction, MeasuredValue factor) {}
}
