package workuptally.tally.amounts;

import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;

/**
 * A charge as mass, volume and amount of substance.
 *
 * @param charge the entry
 * @param planned true where the planned amount was used because no actual one was entered
 * @param amountMillimoles n of the named substance, mmol
 * @param labelAmountMillimoles n by the label's molarity where a titre was used instead, mmol
 * @param massGrams mass of the material as charged, solvent of a solution included, g
 * @param volumeMillilitres volume as charged, mL
 * @param molarMassGramsPerMole molar mass used, g/mol
 * @param asTypedMillimoles n with the molar mass as typed where that differs from the formula's, mmol
 * @param equation the equation in words with the numbers put in
 */
public record ChargeAmount(
        Charge charge,
        boolean planned,
        Optional<MeasuredValue> amountMillimoles,
        OptionalDouble labelAmountMillimoles,
        Optional<MeasuredValue> massGrams,
        Optional<MeasuredValue> volumeMillilitres,
        OptionalDouble molarMassGramsPerMole,
        OptionalDouble asTypedMillimoles,
        String equation) {
    /** Runs of a series have equal equations. */
    public ChargeAmount {
        equation = equation.intern();
    }

    /** True for a charge with the role of a solvent. */
    public boolean isSolvent() {
        return charge.role().filter(r -> r == Charge.Role.SOLVENT).isPresent();
    }
}
