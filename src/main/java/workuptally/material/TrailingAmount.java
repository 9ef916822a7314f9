package workuptally.material;

import java.util.Set;
import java.util.regex.Pattern;

/** Takes an amount off the end of a name, {@code acetone 1950 g}. */
final class TrailingAmount {
    private static final Set<String> UNITS = Set.of("kg", "g", "mg", "L", "l", "mL", "ml");

    private static final Pattern WHOLE =
            Pattern.compile("\\d+(?:[.,]\\d+)? ?(?:[km]?g|[mµμ]?[Ll]|m?mol|eq\\.?|equiv\\.?|Äq\\.?)");

    private TrailingAmount() {}

    /** Whether a text says how much was taken and nothing else, {@code 50 mL}, {@code 0.5 eq}: no word about what it is. */
    static boolean isAmount(String text) {
        return WHOLE.matcher(text).matches();
    }

    /** The name alone; the text itself where no amount stands at its end. */
    static String without(String text) {
        int unit = text.length();
        while (unit > 0 && Character.isLetter(text.charAt(unit - 1))) {
            unit--;
        }
        int number = unit;
        while (number > 0
                && (text.charAt(number - 1) == ' ' && number == unit || isOfNumber(text.charAt(number - 1)))) {
            number--;
        }
        boolean amount = UNITS.contains(text.substring(unit))
                && number < unit
                && number > 0
                && text.substring(number, unit).chars().anyMatch(Character::isDigit);
        return amount && text.charAt(number - 1) == ' '
                ? text.substring(0, number).strip()
                : text;
    }

    private static boolean isOfNumber(char c) {
        return c >= '0' && c <= '9' || c == '.' || c == ',';
    }
}
