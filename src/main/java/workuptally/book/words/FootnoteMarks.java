package workuptally.book.words;

import java.util.Set;
import java.util.regex.Pattern;

/** Marks of footnotes behind names and units, {@code benzoic acid¹}, {@code mg*}, which are no part of them (common practice). */
public final class FootnoteMarks {
    private static final Set<String> NAMES = Set.of("Material", "Substance", "Product", "Standard");
    private static final Set<String> UNITS = Set.of("Unit", "Actual unit", "Planned unit");

    private static final String RAISED = "¹²³ᵃᵇᶜᵈᵉ";
    private static final Pattern MARK = Pattern.compile("(?<=[\\p{L}\\d)\\].%]) ?[" + RAISED + "*†‡§]{1,3}$");

    /** Behind a letter of a formula a raised digit may be a lowered one: {@code C7H6O²}. */
    private static final Pattern MARK_OF_FORMULA =
            Pattern.compile("(?<=[\\d)₀-₉])[" + RAISED + "*†‡§]{1,3}$|(?<=\\p{L})[ᵃ-ᵉ*†‡§]$");

    private FootnoteMarks() {}

    /** The text of a cell under a heading without a mark behind it; another column's as it is. */
    public static String off(String heading, String text) {
        if (text.isEmpty() || text.charAt(text.length() - 1) <= 'z' && text.charAt(text.length() - 1) != '*') {
            return text;
        }
        if (heading.equals("Formula")) {
            return MARK_OF_FORMULA.matcher(text).replaceAll("");
        }
        boolean unit = UNITS.contains(heading) && Unit.named(text).isEmpty();
        return unit || NAMES.contains(heading) ? MARK.matcher(text).replaceAll("") : text;
    }
}
