package workuptally.tally.amounts;

import java.util.List;
import java.util.Optional;
import workuptally.measure.MeasuredValue;
import workuptally.model.Charge;

/** What an equivalent is one of: the first substrate of the run, else its first charge with a coefficient. */
public final class OneEquivalent {
    private OneEquivalent() {}

    /**
     * Its amount of substance, mmol; nothing where it is not known.
     *
     * @param charges the charges that are not themselves given in equivalents, in the order of the book
     */
    public static Optional<MeasuredValue> of(List<ChargeAmount> charges) {
        return charges.stream()
                .filter(c -> c.charge()
                        .role()
                        .filter(r -> r == Charge.Role.SUBSTRATE)
                        .isPresent())
                .findFirst()
                .or(() -> charges.stream()
                        .filter(c -> c.charge().coefficient().entered().isPresent())
                        .findFirst())
                .flatMap(ChargeAmount::amountMillimoles);
    }
}
