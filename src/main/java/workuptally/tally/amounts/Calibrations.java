package workuptally.tally.amounts;

import java.util.LinkedHashMap;
import java.util.Map;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.model.Assay;
import workuptally.model.Assay.Unit;
import workuptally.model.Field.Entered;

/**
 * Results of assays as measured values. Rows that name the same calibration rest on one reading of it, each with its own relative standard
 * uncertainty, so that their errors go the same way and do not average out.
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
        String unit = assay.unit().map(Unit::word).orElse("");
        if (assay.calibration().isBlank() || fraction == 0) {
            return readings.enter(
                    name,
                    unit,
                    result.value(),
                    fraction * Math.abs(result.value()),
                    () -> result.place().inWords());
        }
        Shared calibration = shared.computeIfAbsent(
                assay.calibration(),
                c -> new Shared(
                        fraction,
                        readings.enter(
                                "calibration " + c,
                                "1",
                                1,
                                fraction,
                                () -> assay.row().at("Calibration").inWords())));
        if (fraction == calibration.fraction()) {
            return calibration.factor().times(result.value());
        }
        MeasuredValue error = calibration.factor().minus(readings.exact(1)).times(fraction / calibration.fraction());
        return error.plus(readings.exact(1)).times(result.value());
    }

    private record Shared(double fraction, MeasuredValue factor) {}
}
