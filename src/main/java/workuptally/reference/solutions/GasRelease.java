package workuptally.reference.solutions;

import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Gas that a wash or its solute can set free.
 *
 * @param formula for example {@code CO2}
 * @param setFreeBy what sets it free, for example {@code acid}
 * @param molesPerMole mol of gas per mol of solute; absent where it depends on what is left in the mixture
 */
public record GasRelease(String formula, String setFreeBy, OptionalDouble molesPerMole) {
    private static final String ACID = "acid";

    /** True where acid sets it free, which can be left anywhere. */
    public boolean isByAcid() {
        return setFreeBy.equals(ACID);
    }

    static Optional<GasRelease> of(ReferenceCells row) throws IllegalReferenceException {
        Optional<String> formula = row.optionalText("gas");
        if (formula.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new GasRelease(formula.get(), row.text("gas set free by"), row.optionalNumber("gas (mol/mol)", 0, 10)));
    }
}
