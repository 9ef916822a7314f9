package workuptally.material;

import java.util.List;
import java.util.Optional;
import workuptally.chemistry.Formula;

/** What stands behind the dot of a hydrate or salt. */
final class Adducts {
    private static final Formula WATER = Formula.parse("H2O");

    private final List<Formula> acids;

    /** @param acids formulas of acids that make salts of bases */
    Adducts(List<Formula> acids) {
        this.acids = List.copyOf(acids);
    }

    /** {@code 5H2O}, {@code xH2O}, {@code HCl}. */
    Optional<Form> form(String text) {
        String plain = text.replace(" ", "");
        int at = 0;
        while (at < plain.length() && ("0123456789.,/".indexOf(plain.charAt(at)) >= 0)) {
            at++;
        }
        String count = plain.substring(0, at);
        String rest = plain.substring(at);
        if (count.isEmpty() && rest.length() > 1 && (rest.charAt(0) == 'x' || rest.charAt(0) == 'n')) {
            count = "x";
            rest = rest.substring(1);
        }
        Optional<Formula> formula = looksLikeFormula(rest) ? SubstanceIndex.formula(rest) : Optional.empty();
        if (formula.isEmpty()) {
            return Optional.empty();
        }
        boolean hydrate = formula.get().sameComposition(WATER);
        String waters = count.isEmpty() ? "1" : count;
        if (hydrate) {
            return Optional.of(new Form(Form.Kind.HYDRATE, waters));
        }
        boolean acid = acids.stream().anyMatch(formula.get()::sameComposition);
        return Optional.of(new Form(acid ? Form.Kind.SALT : Form.Kind.ADDUCT, rest));
    }

    /** True for a text without spaces that begins with a capital or a bracket and holds a figure or a second capital. */
    static boolean looksLikeFormula(String text) {
        if (text.isEmpty() || text.indexOf(' ') >= 0 || Character.isLowerCase(text.charAt(0))) {
            return false;
        }
        long telling = text.chars()
                .skip(1)
                .filter(c -> Character.isUpperCase(c) || Character.isDigit(c))
                .count();
        return telling > 0;
    }
}
