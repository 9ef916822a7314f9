package workuptally.book.words;

import java.util.regex.Pattern;

/** Words and marks by which the cell of a formula is left open. */
public final class FormulaWords {
    private static final Pattern OPEN =
            Pattern.compile("[^\\p{L}\\p{N}]*|n/?\\.?a\\.?|none|unknown|unbekannt|inconnu", Pattern.CASE_INSENSITIVE);

    private FormulaWords() {}

    /** A formula as typed; blank where the cell leaves it open. */
    public static String read(String typed) {
        return OPEN.matcher(typed.strip()).matches() ? "" : typed;
    }
}
