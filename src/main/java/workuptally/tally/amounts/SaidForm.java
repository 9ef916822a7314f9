package workuptally.tally.amounts;

import java.util.Optional;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.reference.Reference;
import workuptally.reference.substances.SaltForm;

/** The salt or hydrate that a name speaks of, held against the formula beside it. */
public final class SaidForm {
    private static final String WATER = "H2O";

    private SaidForm() {}

    /** The form that a name speaks of and a formula does not show; empty where they agree or the formula cannot be read. */
    public static Optional<SaltForm> contradicted(Reference reference, String name, String formula) {
        return reference.saltForm(name).filter(form -> !isShownBy(form, formula));
    }

    /** True where a formula shows the form; also true for a blank or unreadable formula, which cannot contradict. */
    public static boolean isShownBy(SaltForm form, String formula) {
        if (formula.isBlank()) {
            return true;
        }
        try {
            Formula parsed = Formula.parse(formula);
            if (form.shows().equals(WATER)) {
                return formula.contains(WATER) || formula.contains("H\u2082O") || formula.contains("OH2");
            }
            return parsed.count(form.shows()) > 0;
        } catch (IllegalFormulaException e) {
            return true;
        }
    }
}
