package workuptally.tally.amounts;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import workuptally.model.Assay;
import workuptally.model.Charge;
import workuptally.model.Field;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.model.SubstanceName;

/**
 * Molar masses of the substances a run names: from the formula where there is one, else as typed, else from the reference data.
 *
 * <p>The formula wins over a typed molar mass; a difference is judged elsewhere.
 */
public final class MolarMassAccount {
    private final Substances substances;
    private final Map<String, Double> byName = new LinkedHashMap<>();

    public MolarMassAccount(Run run, Substances substances) {
        this.substances = substances;
        for (Product product : run.products()) {
            learn(product.name(), product.formula(), product.molarMassGramsPerMole());
        }
        for (Charge charge : run.charges()) {
            learn(charge.material(), charge.formula(), charge.molarMassGramsPerMole());
        }
        for (Assay assay : run.assays()) {
            learn(assay.substance(), assay.formula(), Field.NoNumber.BLANK);
        }
    }

    /** The reference data that they rest on. */
    public Substances substances() {
        return substances;
    }

    /** Molar mass of a substance by its name, g/mol; empty where nothing tells it. */
    public OptionalDouble of(String substance) {
        Double known = byName.get(key(substance));
        return known != null ? OptionalDouble.of(known) : substances.molarMassGramsPerMole(substance);
    }

    /** Molar mass by a formula, else as typed, g/mol. */
    public OptionalDouble of(String formula, Field typed) {
        OptionalDouble computed = byFormula(formula);
        if (computed.isPresent()) {
            return computed;
        }
        return typed.entered().isPresent()
                ? OptionalDouble.of(typed.entered().get().value())
                : OptionalDouble.empty();
    }

    /** Molar mass by a formula, g/mol; empty for a blank or unreadable formula. */
    OptionalDouble byFormula(String formula) {
        return substances.molarMassIn(formula);
    }

    private void learn(String name, String formula, Field typed) {
        OptionalDouble molarMass = of(formula, typed);
        if (!name.isBlank() && molarMass.isPresent()) {
            byName.putIfAbsent(key(name), molarMass.getAsDouble());
        }
    }

    private static String key(String name) {
        return SubstanceName.key(name);
    }
}
