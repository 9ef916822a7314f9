package workuptally.book.words;

import java.util.regex.Pattern;

/**
 * What may stand beside the plain word of a negative test without changing it: the test's own name, who did it and when, what was read
 * (common practice, in English, German and French). Anything else may be the other half of the answer: {@code negative (weak blue)}.
 */
public final class TestWords {
    private static final String NEGATIVE =
            "neg(?:ative?|ativ|\\.)?|n\u00e9g(?:ative?|atif|\\.)?|no colou?r|colou?rless|farblos|incolore|no blue|no peroxides?|no oxidants?|peroxide[ -]free|keine Peroxide?|pas de peroxydes?|0 ?(?:mg/L|mg/l|ppm)|< ?[01](?:[.,]\\d+)? ?(?:mg/L|mg/l|ppm)"
                    + "|no (?:more |further )?(?:gas(?: evolution)?|bubbles|bubbling|effervescence|fizz(?:ing)?|foaming)|gas(?: evolution)? (?:has )?(?:ceased|stopped)"
                    + "|kein Gas(?: mehr)?|keine Gasentwicklung(?: mehr)?|keine Blasen(?: mehr)?|plus de gaz|pas de gaz|pas de d\u00e9gagement(?: gazeux)?";

    /** Capitals that are no initials: they say another result, or a colour. */
    private static final String SPEAKS = "(?:POS|NOK|NIO|KO|NG|YES|JA|OUI|ROT|RED|BLU|ON)(?!\\p{L})";

    /** One of two tests, {@code 1 of 2} or {@code 1/2}: the other may have said otherwise. Larger numbers are a day. */
    private static final Pattern PART_OF_TESTS = Pattern.compile(
            "(?<![\\d./-])([0-6]) ?(?:/|of|out of|von|aus|sur) ?([1-6])(?![\\d/.-])", Pattern.CASE_INSENSITIVE);

    private static final Pattern SAYS_NEGATIVE = Pattern.compile(
            "(?<![\\p{L}\\d])(?:" + NEGATIVE + ")(?![\\p{L}\\d])", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private static final Pattern HARMLESS = Pattern.compile(
            "(?<![\\p{L}\\d])(?:"
                    // the word itself, and what it looks like
                    + NEGATIVE
                    // the test
                    + "|KI|KI[ -]?paper|KI-?Papier|potassium iodide|Kaliumiodid|starch|St\u00e4rke|amidon|iodide|[IJ]odid|iodure|[IJ]odst\u00e4rke(?:papier)?|peroxides?|Peroxid[e]?|peroxyde|strips?|stick|(?:Test)?streifen|(?:Test)?st\u00e4bchen|bandelette|(?:test ?)?paper|Papier|papier|Quantofix|M?Quant|Merckoquant|tests?|result|Ergebnis|r\u00e9sultat|quench"
                    // how, who and when
                    + "|(?-i:(?:by|von|par) \\p{Lu}[\\p{L}.]*|(?!" + SPEAKS
                    + ")\\p{Lu}{2,3})|(?:after|nach|apr\u00e8s) (?:\\d+ ?(?:min|h)|quench)|(?:by|with|mit|auf|on|per|using|avec|sur|via|of|at|um|\u00e0|am|le|from|vom)"
                    + "|\\d{1,2}(?::|h)\\d{2}(?: ?(?:h|Uhr))?|\\d{4}-\\d{2}-\\d{2}|\\d{1,2}\\. ?\\d{1,2}\\.(?: ?\\d{2,4})?|\\d{1,2}/\\d{1,2}(?:/\\d{2,4})?"
                    + "|\\d(?:st|nd|rd|th|\\.|x)?|twice|2 ?x|x ?2|zweimal|deux fois|both"
                    + ")(?![\\p{L}\\d])",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private static final Pattern SEPARATORS = Pattern.compile("[\\s,;:()\\[\\]/=-]+");

    private TestWords() {}

    /** True where the words, in whatever order, say that the test was negative, and nothing else. */
    public static boolean sayNegative(String typed) {
        return SAYS_NEGATIVE.matcher(TypedText.plain(typed)).find() && leaveNegative(typed);
    }

    /** True for a negative test with nothing beside it that could say otherwise. */
    public static boolean leaveNegative(String typed) {
        String plain = TypedText.plain(typed);
        boolean ofSome = PART_OF_TESTS
                .matcher(plain)
                .results()
                .anyMatch(part -> !part.group(1).equals(part.group(2)));
        String rest = HARMLESS.matcher(plain).replaceAll(" ");
        return !ofSome && SEPARATORS.matcher(rest).replaceAll("").isEmpty();
    }
}
