package workuptally.report.pdf.layout;

import java.util.Set;

/**
 * Places in a text at which no line may end although there is a blank or a mark: between a number and its unit, around ±, behind ≤ and its
 * like, between line, row or step and its number, inside a number, and between a sheet and its
 * cell.
 */
final class KeptTogether {
    private static final Set<String> UNITS = Set.of(
            "%",
            "\u2030", "g", "mg", "kg", "µg", "μg", "mL", "L", "µL", "μL", "mol", "mmol", "µmol", "μmol", "mg/mL",
            "g/mL", "g/L", "mmol/mL", "mol/L", "mmol/L", "mmol/g", "g/mol", "g/g", "mg/g", "kPa", "mbar", "bar", "°C",
            "K", "M", "N", "h", "min", "s", "ppm", "wt", "vol", "equiv", "cm");

    private static final Set<String> BEFORE_A_NUMBER = Set.of("line", "row", "step", "page", "No.", "pH");

    private KeptTogether() {}

    /**
     * True where what stands before and behind a possible end of a line belongs together.
     *
     * @param text text
     * @param end where the line would end, above 0
     */
    static boolean at(String text, int end) {
        if (end >= text.length()) {
            return false;
        }
        char before = text.charAt(end - 1);
        if (before == '!') {
            return Character.isLetterOrDigit(text.charAt(end));
        }
        if (before == '°') {
            return Character.isLetter(text.charAt(end));
        }
        if (end < 2) {
            return false;
        }
        if (before == '.' || before == ',') {
            return isDigit(text.charAt(end - 2)) && isDigit(text.charAt(end));
        }
        if (before != ' ') {
            return false;
        }
        char left = text.charAt(end - 2);
        char right = text.charAt(end);
        if (isSign(left) || right == '±') {
            return true;
        }
        if (isDigit(left)) {
            return UNITS.contains(word(text, end));
        }
        return isDigit(right) && BEFORE_A_NUMBER.contains(wordBefore(text, end - 1));
    }

    private static boolean isSign(char c) {
        return c == '±' || c == '≤' || c == '≥' || c == '<' || c == '>' || c == '≈';
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** The word that begins there, without the marks behind it. */
    private static String word(String text, int from) {
        int end = from;
        while (end < text.length() && !Character.isWhitespace(text.charAt(end)) && text.charAt(end) != '\u00A0') {
            end++;
        }
        while (end > from && ",;.:)".indexOf(text.charAt(end - 1)) >= 0) {
            end--;
        }
        return text.substring(from, end);
    }

    /** The word that ends there. */
    private static String wordBefore(String text, int end) {
        int from = end;
        while (from > 0 && !Character.isWhitespace(text.charAt(from - 1)) && text.charAt(from - 1) != '(') {
            from--;
        }
        return text.substring(from, end);
    }
}
