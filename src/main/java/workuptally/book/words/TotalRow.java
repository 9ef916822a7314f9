package workuptally.book.words;

import java.util.regex.Pattern;

/** Words at the head of a row that adds up others and records nothing itself (common practice). */
public final class TotalRow {
    private static final Pattern NAMES = Pattern.compile(
            "(?:grand |sub ?-?)?(?:totals?|sums?|subtotal|Summe|Zwischensumme|Gesamt|Gesamtsumme|insgesamt|somme|Σ|∑|mean|average|avg\\.?|Mittel|Mittelwert|Durchschnitt|moyenne|median|Ø|s\\.?d\\.?|std\\.? ?dev\\.?|min|max|count)(?:[ :=(].*)?",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private TotalRow() {}

    /** True for a label of such a row. */
    public static boolean isNamed(String label) {
        return NAMES.matcher(TypedText.plain(label)).matches();
    }
}
