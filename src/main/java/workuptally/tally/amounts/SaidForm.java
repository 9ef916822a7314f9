package workuptally.tally.amounts;

import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.reference.Reference;
import workuptally.reference.substances.SaltForm;

/** The salt or hydrate that a name speaks of, held against the formula beside it. */
public final class SaidForm {
    private static final String WATER = "H2O";

    /** Water as a part of its own, {@code ·2H2O} or {@code (H2O)6}: the H2O within C2H2O4 is none. */
    private static final Pattern WATER_PART =
            Pattern.compile("(?:^|[·•⋅∙‧*.({\\[×x\\s])\\s*[0-9.,/½]*\\s*(?:H[2₂]O|OH[2₂])(?![a-z0-9₀-₉])");

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
                return WATER_PART.matcher(formula).find();
            }
            return parsed.count(form.shows()) > 0;
        } catch (IllegalFormulaException e) {
            return true;
        }
    }
}
