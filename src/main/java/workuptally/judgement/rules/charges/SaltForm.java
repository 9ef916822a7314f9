package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.chemistry.Formula;
import workuptally.chemistry.IllegalFormulaException;

/**
 * A salt or hydrate form that a name speaks of, and what a formula of that form must hold. Chloral and hydrazine hydrate are names of the
 * substance itself and left out.
 *
 * @param word finds the word in a name, lower case
 * @param sign element, or {@code H2O}, that the formula must show
 */
record SaltForm(Pattern word, String sign) {
    private static final List<SaltForm> FORMS = List.of(
            of("hydrochloride", "Cl"),
            of("hydrobromide", "Br"),
            of("hydroiodide", "I"),
            of("sodium salt", "Na"),
            of("potassium salt", "K"),
            of("lithium salt", "Li"),
            of("ammonium salt", "N"),
            of("hydrate", "H2O"));
    private static final List<String> NAMES_OF_THE_SUBSTANCE = List.of("chloral hydrate", "hydrazine hydrate");

    /** The first form that a name or note speaks of. */
    static Optional<SaltForm> in(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (NAMES_OF_THE_SUBSTANCE.stream().anyMatch(lower::contains)) {
            return Optional.empty();
        }
        return FORMS.stream().filter(f -> f.word().matcher(lower).find()).findFirst();
    }

    private static SaltForm of(String word, String sign) {
        return new SaltForm(
                Pattern.compile(
                        "(?<![a-z])(mono|di|tri|tetra|penta|hexa|hepta|octa|deca|hemi|sesqui)?" + word + "(?![a-z])"),
                sign);
    }

    /** True where a formula shows the form; also true for a blank or unreadable formula, which cannot contradict. */
    boolean isShownBy(String formula) {
        if (formula.isBlank()) {
            return true;
        }
        try {
            Formula parsed = Formula.parse(formula);
            if (sign.equals("H2O")) {
                return formula.contains("H2O") || formula.contains("H₂O") || formula.contains("OH2");
            }
            return parsed.count(sign) > 0;
        } catch (IllegalFormulaException e) {
            return true;
        }
    }
}
