package workuptally.tally.bench;

import java.util.Optional;
import java.util.stream.Stream;

/** Gases that water hardly holds, so that their mass leaves a run; molar masses from the abridged IUPAC atomic weights. */
public enum LeavingGas {
    /** Of carbonates. */
    CARBON_DIOXIDE("CO2", 44.009),
    /** Of hydrides and metals. */
    HYDROGEN("H2", 2.016);

    private final String formula;
    private final double gramsPerMole;

    LeavingGas(String formula, double gramsPerMole) {
        this.formula = formula;
        this.gramsPerMole = gramsPerMole;
    }

    /** The formula as the reference tables write it. */
    public String formula() {
        return formula;
    }

    /** Molar mass, g/mol. */
    double gramsPerMole() {
        return gramsPerMole;
    }

    /** The gas of a formula; empty for one that water takes up, or none. */
    static Optional<LeavingGas> ofFormula(String formula) {
        return Stream.of(values()).filter(gas -> gas.formula.equals(formula)).findFirst();
    }
}
