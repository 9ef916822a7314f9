package workuptally.book.words;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Words that benches write for a number, for none, or beside one; English and German, the commonest French (common practice). */
public final class NumberWords {
    /** Longest text that can stand for nothing. */
    private static final int LONGEST_FOR_NOTHING = 32;

    private static final Pattern NOTHING =
            pattern("-{0,3}|/|\\?{1,3}|\\(?blank\\)?|n/?[am]|n\\. ?[abm]\\.?|k\\. ?a\\.?|t\\.?b\\.?[acdmw]\\.?"
                    + "|(?:not|nicht|non|pas|never|un|no)(?: yet| noch)? ?(?:measured|determined|det\\.|recorded|weighed|taken|known|run|checked|titrated|done"
                    + "|noted|available|avail\\.|read|tested|analysed|analyzed|sampled|assayed|calculated|calc\\.|applicable|appl\\.|entered|filled in|given|reading|entry|data|value"
                    + "|bestimmt|gemessen|gewogen|ermittelt|bekannt|notiert|erfasst|geprüft|titriert|abgelesen|analysiert"
                    + "|mesuré|pesé|déterminé|dosé|connu|noté|fait|titré|lu)"
                    + "|noch (?:offen|ausstehend|nicht .*)|keine (?:Angabe|Messung|Daten)"
                    + "|(?:[\\w-]+ )?(?:pending|ausstehend|outstanding)|to (?:do|follow|come|weigh|measure|be .*)|todo|missing|forgot(?:ten)?|forgot to .*"
                    + "|unknown|unbekannt|inconnu|fehlt|vergessen|offen|folgt|empty cell|awaited|awaiting .*");

    private static final Pattern NOT_DETECTED = pattern(
            "n\\.? ?d\\.?|n\\. ?n\\.|nn|u\\. ?d\\. ?l\\.?|b\\. ?d\\. ?l\\.?|< ?(?:LOD|MDL|NWG|DL)|(?:below|under|unter) (?:the )?(?:LOD|MDL|NWG|DL|detection limit|limit of detection|Nachweisgrenze)"
                    + "|(?:not|nicht|non|nil|none|nothing|never|no|un)[ -]?(?:detected|detectable|det'd|observed|seen|visible|found|nachweisbar|nachgewiesen|detektiert|detektierbar|gefunden|détecté|détectable|peak)");

    /** Marks before a number that is only about right. */
    public static final String ABOUT =
            "~+|(?:ca\\.|circa|approx\\.|approximately|about|around|roughly|etwa|rd\\.|rund|ungefähr|ungef\\.|zirka|env\\.|environ|est\\.|estimated|geschätzt|schätzungsweise)|(?:ca|c\\.|approx|rd|env|est)(?![A-Za-z])";

    /** Marks of an upper limit. */
    public static final String BELOW =
            "<=|=<|<|(?:below|less than|under|at most|up to|no more than|not more than|NMT|unter|kleiner als|kleiner|weniger als|höchstens|bis zu|maximal|moins de|inférieur à)(?![A-Za-z])|max(?:imum|\\.)?(?![A-Za-z])";

    /** Marks of a lower limit. */
    public static final String ABOVE =
            ">=|=>|>|(?:above|over|more than|greater than|at least|not less than|no less than|NLT|minimum|über|mehr als|größer als|größer|mindestens|wenigstens|plus de|au moins|supérieur à)(?![A-Za-z])|min\\.?(?![A-Za-z])";

    private static final Pattern ABOUT_BEHIND = pattern(
            "-?ish|\\(?(?:~|ca\\.?|circa|approx\\.?|approximately|about|roughly|estimated?|est\\.?|geschätzt|geschätzter Wert|ungefähr|etwa|environ|guess(?:ed)?|by eye)\\)?");

    private static final Map<String, Integer> COUNTS = Map.ofEntries(
            Map.entry("once", 1),
            Map.entry("twice", 2),
            Map.entry("thrice", 3),
            Map.entry("one", 1),
            Map.entry("two", 2),
            Map.entry("three", 3),
            Map.entry("four", 4),
            Map.entry("five", 5),
            Map.entry("six", 6),
            Map.entry("seven", 7),
            Map.entry("eight", 8),
            Map.entry("nine", 9),
            Map.entry("ten", 10),
            Map.entry("twelve", 12),
            Map.entry("ein", 1),
            Map.entry("eins", 1),
            Map.entry("eine", 1),
            Map.entry("zwei", 2),
            Map.entry("drei", 3),
            Map.entry("vier", 4),
            Map.entry("fünf", 5),
            Map.entry("sechs", 6),
            Map.entry("einmal", 1),
            Map.entry("zweimal", 2),
            Map.entry("dreimal", 3),
            Map.entry("viermal", 4),
            Map.entry("un", 1),
            Map.entry("une", 1),
            Map.entry("deux", 2),
            Map.entry("trois", 3),
            Map.entry("quatre", 4));

    private static final Pattern COUNTED =
            pattern("(?<word>\\p{L}+)(?: (?:times|x|portions?|loads?|Portionen|mal|fois|nuclei|protons?|H))?");

    private static final Pattern COUNTED_DIGITS = pattern(
            "(?:x ?)?(?<digits>\\d{1,3})(?: ?(?:x|times|portions?|loads?|Portion(?:en)?|Ladung(?:en)?|mal|fois|nuclei|protons?|H|washes|pcs\\.?))?"
                    + "(?: ?\\((?<again>\\p{L}+)\\))?");

    private NumberWords() {}

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** True for a word or mark that stands for no entry. */
    public static boolean meanNothing(String text) {
        return text.length() <= LONGEST_FOR_NOTHING && NOTHING.matcher(text).matches();
    }

    /** True for words that say that nothing was found. */
    public static boolean meanNotDetected(String text) {
        return text.length() <= 60 && NOT_DETECTED.matcher(text).matches();
    }

    /** True for a mark behind a number that says it is only about right. */
    public static boolean meanAbout(String text) {
        return ABOUT_BEHIND.matcher(text).matches();
    }

    /** A count in words or with its noun, {@code three}, {@code x3}, {@code 3 portions}; 0 if it is none. */
    public static int count(String text) {
        var digits = COUNTED_DIGITS.matcher(text);
        if (digits.matches()) {
            int count = Integer.parseInt(digits.group("digits"));
            String again = digits.group("again");
            return again == null || COUNTS.getOrDefault(again.toLowerCase(Locale.ROOT), 0) == count ? count : 0;
        }
        var word = COUNTED.matcher(text);
        return word.matches()
                ? Math.max(0, COUNTS.getOrDefault(word.group("word").toLowerCase(Locale.ROOT), 0))
                : 0;
    }
}
