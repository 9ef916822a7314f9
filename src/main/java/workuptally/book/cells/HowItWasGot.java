package workuptally.book.cells;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words behind a number that say how it was got and change nothing in it, though they may hold a number of their own: {@code (after 2 h HV)},
 * {@code (2 crops)}, {@code const. mass}, {@code mean of 3} (common practice).
 */
final class HowItWasGot {
    private static final String TIME =
            "\\d[\\d.,]* ?(?:min|h|hrs?|hours?|d|days?|Std\\.?|Stunden|Tage?n?|heures?|jours?)";

    private static final String DRYING =
            "(?:HV|h\\.v\\.|hi-?vac|high[- ]vac(?:uum)?|vac(?:uum)?|pump|oven|desiccator|drying|dried"
                    + "|HV-Pumpe|Hochvakuum|Vakuum|Ölpumpe|Trockenschrank|Exsikkator|Trocknen|Trocknung|vide|étuve)";

    private static final String COUNT = "(?:\\d{1,2}|two|three|four|zwei|drei|vier|deux|trois|quatre)";

    private static final Pattern WORDS = Pattern.compile("(?iu)(?<=\\S),? ?[(\\[]? ?(?:"
            + "(?:after|nach|après) " + TIME + " (?:at |on |under |in |im |am |an der |of |sous |de )?(?:the )?"
            + DRYING
            + "|" + TIME + " (?:at |on |under |in |im |am |an der |sous )?(?:the )?" + DRYING
            + "|" + COUNT + " (?:combined )?(?:crops?|fractions|Fraktionen|Kristallisate|jets)"
            + "|(?:const\\.?|constant|konst\\.?|konstante) (?:mass|weight|wt\\.?|Masse|Gewicht)|(?:Massen|Gewichts)konstanz"
            + "|(?:mean|average|avg\\.?|Mittel|Mittelwert|MW|moyenne) (?:of|aus|von|de) (?:n ?= ?)?" + COUNT
            + "|n ?= ?\\d{1,2}"
            + ") ?[)\\]]?$");

    private HowItWasGot() {}

    /** A text without such words at its end; unchanged where it does not begin with a number or has none. */
    static String off(String text) {
        Matcher words = WORDS.matcher(text);
        return words.find() && text.substring(0, words.start()).matches("[<>≤≥~]? ?[-+]?\\d.*")
                ? text.substring(0, words.start())
                : text;
    }
}
