package workuptally.book.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The word of a choice within what people write around it: {@code 2nd wash}, {@code dry over MgSO4}, {@code KI paper neg},
 * {@code EtOAc layer} (common practice).
 *
 * <p>A phrase that doubts, denies or names two things is none.
 */
final class ChoicePhrase {
    /** What doubts, denies, refers elsewhere or puts two things side by side. */
    private static final Pattern NOT_ONE_THING = Pattern.compile(
            "\\?|/| \\+ |&|->|;"
                    + "|(?<!\\p{L})(?:no|not|nicht|kein|keine|never|un|without|ohne|sans|pas|or|oder|ou|and|und|et|then|dann|before|vor|avant|failed|see|siehe|as|wie|same|again|maybe|perhaps|partly|half|except|instead|will|to be|was|were|twice over|planned|geplant|prévu|unclear|unklar|unsure|skipped|skip|unfinished|incomplete|pending|tbd|todo|later|tomorrow|doubtful|probably|wahrscheinlich|guess|assumed|mixed|both|left|part|partial|partially|teilweise)(?!\\p{L})",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private static final Pattern WITH = Pattern.compile("(?<!\\p{L})w/ ?(?!o)", Pattern.CASE_INSENSITIVE);
    private static final Pattern BRACKETS = Pattern.compile(" ?[(\\[][^)\\]]*[)\\]]");

    /** What takes the word before the brackets back: {@code wash (skipped)}. */
    private static final Pattern TAKEN_BACK = Pattern.compile(
            "(?iu)(?<!\\p{L})(?:not|never|nicht|skipped|skip|failed|omitted|planned|to do|todo|tbd|unfinished|incomplete|abandoned|übersprungen"
                    + "|ausgelassen|geplant|abgebrochen|pas|sauté|prévu|à faire)(?!\\p{L})");

    /** A test by two things together, {@code KI/starch}. */
    private static final Pattern KI_STARCH = Pattern.compile(
            "(?iu)(?<!\\p{L})(KI|iodide|Kaliumiodid|[IJ]odid|iodure) ?/ ?(starch|Stärke|amidon)(?!\\p{L})");

    private static final Pattern COUNT = Pattern.compile(
            "^(?:\\d{1,2}(?:st|nd|rd|th|\\.|x)?|[x#]\\d{1,2}|first|second|third|final|last|letzte|erste|zweite) +|,? *(?:\\d{1,2} ?x|[x#]?\\d{1,2}|[A-C]|I{1,3})$",
            Pattern.CASE_INSENSITIVE);

    /** What follows says with what, where or how far. */
    private static final Pattern DETAIL = Pattern.compile(
            "(?: (?:with|w/|w\\.|over|to|in|into|through|by|from|of|on|at|under|via|using|for|against|mit|über|auf|aus|durch|gegen|im|am|bei|zur|zu|von|nach|avec|sur|dans|par|à|de)(?: |$)|,).*$",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    /** What may stand beside the word and changes nothing: a noun, a number, a formula or an abbreviation such as EtOAc. */
    private static final Pattern BESIDE =
            Pattern.compile("\\p{L}*[\\p{Ll}\\d]?\\p{Lu}[\\p{L}\\d]*\\d?.*|[\\d.,%°CxX]+|(?i:XX)");

    /** Nouns that only say of what the word is said. */
    private static final Set<String> NOUNS = Set.of(
            "layer",
            "layers",
            "phase",
            "phasen",
            "paper",
            "papier",
            "strip",
            "starch",
            "stärke",
            "amidon",
            "teststreifen",
            "schicht",
            "portion",
            "fraction",
            "extract",
            "step",
            "product",
            "produkt",
            "result",
            "test",
            "material");

    private ChoicePhrase() {}

    /**
     * The one value that a phrase means.
     *
     * @param nothingElse true where a layer's evidence may rest on it: no word that could say something else stands beside it
     * @param find finds the value of a word or short phrase
     */
    static <E> Optional<E> find(String typed, boolean nothingElse, Function<String, Optional<E>> find) {
        String text = KI_STARCH
                .matcher(WITH.matcher(Unit.raisedDigitsDown(TypedText.plain(typed)))
                        .replaceAll("with "))
                .replaceAll("$1 $2");
        Optional<E> whole = find.apply(text);
        if (whole.isPresent()) {
            return whole;
        }
        String bare = BRACKETS.matcher(text).replaceAll("").strip();
        if (BRACKETS.matcher(text)
                .results()
                .anyMatch(b -> TAKEN_BACK.matcher(b.group()).find())) {
            return Optional.empty();
        }
        if (!bare.isEmpty() && !bare.equals(text) && !text.contains("?")) {
            whole = find.apply(bare);
        }
        if (whole.isPresent() || NOT_ONE_THING.matcher(bare).find()) {
            return whole;
        }
        String uncounted = COUNT.matcher(bare).replaceAll("").strip();
        String brief = DETAIL.matcher(uncounted).replaceAll("").strip();
        for (String candidate : List.of(uncounted, brief)) {
            Optional<E> found = find.apply(candidate).or(() -> find.apply(withoutNoun(candidate)));
            if (found.isPresent()) {
                return saysOther(uncounted, found.get(), find) ? Optional.empty() : found;
            }
        }
        return byItsWords(brief.isEmpty() ? uncounted : brief, nothingElse, find);
    }

    /** True where another word of the phrase names another value: {@code dried in oven}. */
    private static <E> boolean saysOther(String phrase, E value, Function<String, Optional<E>> find) {
        for (String word : phrase.split("[ ,]+")) {
            if (find.apply(word).filter(other -> other != value).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private static String withoutNoun(String text) {
        int space = text.lastIndexOf(' ');
        return space > 0 && NOUNS.contains(text.substring(space + 1).toLowerCase(Locale.ROOT))
                ? text.substring(0, space)
                : text;
    }

    private static boolean isOnlyBeside(String word) {
        return BESIDE.matcher(word).matches() || NOUNS.contains(word.toLowerCase(Locale.ROOT));
    }

    /** The value that exactly one word, or several of the same meaning, name. */
    private static <E> Optional<E> byItsWords(String text, boolean nothingElse, Function<String, Optional<E>> find) {
        String[] words = text.split(" ");
        if (words.length < 2 || words.length > 4) {
            return Optional.empty();
        }
        List<E> named = new ArrayList<>();
        for (String word : words) {
            Optional<E> value = find.apply(word);
            if (value.isEmpty() && nothingElse && !isOnlyBeside(word)) {
                return Optional.empty();
            }
            value.filter(one -> !named.contains(one)).ifPresent(named::add);
        }
        return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
    }
}
