package workuptally.tally.amounts;

import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Step;

/**
 * A material added in a step, all portions together.
 *
 * @param step the step
 * @param material name as typed
 * @param massGrams mass, g
 * @param volumeMillilitres volume, mL
 * @param purification true where it belongs to a purification, outside the workup's balance
 */
public record Addition(
        Step step,
        String material,
        Optional<MeasuredValue> massGrams,
        Optional<MeasuredValue> volumeMillilitres,
        boolean purification) {}
