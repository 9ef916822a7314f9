package workuptally.reference.substances;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The form in which a material is usually sold, understood when its row is read.
 *
 * @param words as on the label, for example {@code 2.5 mol/L in hexanes}, {@code 60 % dispersion in mineral oil}
 * @param most the highest figure of goods that are never pure: a solution, a dispersion or wet goods, in the unit of the words; empty where
 *     it is sold pure as well, or no figure is told
 */
public record UsualForm(String words, OptionalDouble most) {
    private static final Pattern NOT_PURE =
            Pattern.compile("(?<!\\d)(\\d+(?:\\.\\d+)?)(?:(?:-| or | to )(\\d+(?:\\.\\d+)?))?"
                    + " (?:%|mol/L)(?= in | dispersion| \\(rest|,| Pd| Pt| Rh| hydrazine| active chlorine|$)");

    private static final Pattern ALSO_PURE = Pattern.compile("solid|powder|neat|pellets|trihydrate");

    /** Takes what a cell says. */
    static UsualForm of(String words) {
        Matcher figure = NOT_PURE.matcher(words);
        if (ALSO_PURE.matcher(words).find() || !figure.find()) {
            return new UsualForm(words, OptionalDouble.empty());
        }
        String most = figure.group(2) == null ? figure.group(1) : figure.group(2);
        return new UsualForm(words, OptionalDouble.of(Double.parseDouble(most)));
    }

    /** True for goods that are always weaker than a share, mass %. */
    public boolean isWeakerThan(double percent) {
        return most.isPresent() && most.getAsDouble() < percent;
    }
}
