package workuptally.tally.amounts;

import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IllegalFormulaException;
import workuptally.material.Substance;
import workuptally.reference.substances.SaltForm;

/** The salt or hydrate that a name speaks of, held against the formula beside it. */
public final class SaidForm {
    private static final String WATER = "H2O";

    /** Water as a part of its own, {@code ·2H2O} or {@code (H2O)6}: the H2O within C2H2O4 is none. */
    private static final Pattern WATER_PART =
            Pattern.compile("(?:^|[·•⋅∙‧*.({\\[×x\\s])\\s*[0-9.,/½]*\\s*(?:H[2₂]O|OH[2₂])(?![a-z0-9₀-₉])");

    /** The end of a listed formula of a hydrate whose water is not told, {@code .xH2O}. */
    private static final Pattern WATERS_NOT_TOLD = Pattern.compile("\\.xH2O$");

    private SaidForm() {}

    /**
     * The form that a name speaks of and a formula does not show; empty where they agree or the formula cannot be read. Written in one piece a
     * formula shows no water: it is the hydrate's where it is what the tables know by that name, with water.
     */
    public static Optional<SaltForm> contradicted(Substances substances, String name, String formula) {
        return substances
                .reference()
                .saltForm(name)
                .filter(form -> !isShownBy(form, formula))
                .filter(form -> !form.shows().equals(WATER) || !isHydrateInOnePiece(substances, name, formula));
    }

    private static boolean isHydrateInOnePiece(Substances substances, String name, String formula) {
        Optional<Formula> typed = Formula.in(formula);
        Optional<String> listed = substances
                .material(name)
                .main()
                .substance()
                .flatMap(Substance::formula)
                .map(text -> WATERS_NOT_TOLD.matcher(text).replaceFirst(""));
        return typed.isPresent()
                && listed.flatMap(Formula::in)
                        .filter(known -> typed.get().watersBeyond(known) > 0
                                || WATER_PART.matcher(listed.get()).find()
                                        && typed.get().sameComposition(known))
                        .isPresent();
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
