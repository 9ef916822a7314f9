package workuptally.book.words;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What people enter as evidence that a lot is its product: {@code 1H NMR}, {@code mp 121 °C (lit. 122)}, {@code pending},
 * {@code NMR: wrong compound}; by the words of {@code identity-words.csv}.
 *
 * <p>Evidence is taken for such only where every word beside it is known: what is not understood may say that it is another substance.
 */
public final class IdentityWords {
    /** What an entry amounts to. */
    public enum Meaning {
        /** No entry. */
        NOTHING,
        /** Names evidence, and nothing beside it that could say otherwise. */
        EVIDENCE,
        /** Holds something that is not understood, or names no evidence. */
        UNKNOWN,
        /** Denies the identity or puts it off. */
        OPEN
    }

    /**
     * An entry as read.
     *
     * @param meaning what it amounts to
     * @param words the words that decided, where it is unknown or open; else empty
     */
    public record Read(Meaning meaning, String words) {}

    private static final Pattern NO_ENTRY = Pattern.compile("[-/?.]{1,3}|(?i:n/?a|n\\.a\\.)|");
    private static final Map<String, String> MEANINGS = meanings();
    private static final Pattern WORDS = Pattern.compile(
            "(?iu)(?<![\\p{L}\\d])(?:" + alternatives(row -> !row.equals("impurity")) + ")(?![\\p{L}\\d])");

    /** Nothing, traces or less than half of something else beside the product. */
    private static final String LITTLE =
            "(?:no|without|free (?:of|from)|kein\\p{L}*|ohne|sans|pas de|aucune?|traces? (?:of )?|Spuren(?: von)?"
                    + "|residual|minor|little|some|(?:[<~] ?|ca\\.? ?)?[0-4]?\\d(?:[.,]\\d+)? ?%(?: of)?)";

    private static final Pattern LITTLE_IMPURITY = Pattern.compile("(?iu)(?<![\\p{L}\\d])" + LITTLE
            + " ?(?:(?:visible|detectable|residual|remaining|mehr) )?(?:" + alternatives("impurity"::equals)
            + ")(?: (?:left|remaining|visible|seen|detected|observed|sichtbar))?(?![\\p{L}\\d])");

    /** Of words that no list has only where they are told to be gone: {@code no ester left}, {@code free of boronic acid}. */
    private static final Pattern NOTHING_LEFT = Pattern.compile(
            "(?iu)(?<![\\p{L}\\d])(?:(?:no|kein\\p{L}*|pas d[e']) \\p{L}+(?: \\p{L}+)? (?:left|remaining|mehr)"
                    + "|(?:free (?:of|from)|frei von|exempt de) \\p{L}+(?: \\p{L}+)?)(?![\\p{L}\\d])");

    private static final Pattern ABOUT_THE_PRODUCT =
            Pattern.compile("(?iu).*(?:product|produkt|produit|target|compound|signal|match|spect).*");

    /** Two of what a pure substance has one of. */
    private static final Pattern SEVERAL = Pattern.compile(
            "(?iu)(?<![\\p{L}\\d.])(?:[2-9]|two|three|several|zwei|drei|mehrere|deux|plusieurs) (?:peaks?|spots?|compounds?|products?|substances?|Flecken?|Substanzen|Produkte|pics|taches|produits)(?![\\p{L}\\d])");

    /** A melting or boiling point beside the one of the literature, as single figures or ranges. */
    private static final Pattern WITH_LITERATURE = Pattern.compile(
            "(?iu)(\\d{1,3}(?:[.,]\\d+)?)(?: ?[-\u2013] ?(\\d{1,3}(?:[.,]\\d+)?))? ?\u00b0? ?C?[ ,;(\\[]*(?:lit|literature|literatur|litt\u00e9rature|reported)\\.?:? ?(?:mp |m\\.p\\. )?(\\d{1,3}(?:[.,]\\d+)?)(?: ?[-\u2013] ?(\\d{1,3}(?:[.,]\\d+)?))?");

    /** The same of one or two words that no list has: {@code 5 % ethyl acetate}. */
    private static final Pattern LITTLE_ELSE = Pattern.compile(
            "(?iu)(?<![\\p{L}\\d])"
                    + "(?:traces? of|Spuren von|residual|[0-4]?\\d(?:[.,]\\d+)? ?%(?: of)?) \\p{L}+(?: \\p{L}+)?(?![\\p{L}\\d])");

    /** A word that could say something; abbreviations and initials have few letters, codes have digits. */
    private static final Pattern WORD = Pattern.compile("\\p{Ll}{3,}|\\p{Lu}\\p{Ll}{3,}|\\p{Lu}{5,}");

    private static final Pattern FIRST_WORD = Pattern.compile("\\p{Lu}\\p{Ll}{2,}");

    /** A person, by a title, as who did it, or by an author's year. */
    private static final Pattern PERSON = Pattern.compile(
            "(?<![\\p{L}\\d])(?:(?:by|par|durch|[Ll]it\\.?:?|[Rr]ef\\.?:?|Dr\\.?|Prof\\.?|Herr|Frau|Mr\\.?|Mrs\\.?|Ms\\.?"
                    + "|\\p{Lu}\\.) ?\\p{Lu}\\p{Ll}+(?![\\p{L}\\d])|\\p{Lu}\\p{Ll}+,? (?:et al\\.?,? ?)?(?:\\(?(?:19|20)\\d\\d|et al))");

    private IdentityWords() {}

    private static Map<String, String> meanings() {
        Map<String, String> meanings = new HashMap<>();
        WordRow.all("identity-words.csv").stream()
                .filter(row -> !row.cell("means").equals("impurity"))
                .forEach(row -> row.words("words").forEach(word -> meanings.put(key(word), row.cell("means"))));
        return Map.copyOf(meanings);
    }

    private static String key(String word) {
        return word.replaceAll("[ -]", "").toLowerCase(Locale.ROOT);
    }

    /** Words of some meanings, the longest first, since one may begin another: {@code to}, {@code to do}. */
    private static String alternatives(Predicate<String> meanings) {
        return WordRow.all("identity-words.csv").stream()
                .filter(row -> meanings.test(row.cell("means")))
                .flatMap(row -> row.words("words").stream())
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(word -> Stream.of(word.split(" ")).map(Pattern::quote).collect(Collectors.joining("[ -]?")))
                .collect(Collectors.joining("|"));
    }

    /**
     * Reads an entry.
     *
     * @param product name of the lot's product, which may stand in it
     * @param farFromLiterature difference of a melting or boiling point from the literature that denies the identity, K; asked for
     *     only where both stand in the entry
     */
    public static Read read(String typed, String product, DoubleSupplier farFromLiterature) {
        String text = Unit.raisedDigitsDown(TypedText.plain(typed));
        if (NO_ENTRY.matcher(text).matches()) {
            return new Read(Meaning.NOTHING, "");
        }
        if (NumberWords.meanNothing(text) || NumberWords.meanNotDetected(text)) {
            return new Read(Meaning.OPEN, text);
        }
        String unnamed = product.isBlank()
                ? text
                : Pattern.compile("(?iu)(?<![\\p{L}\\d])" + Pattern.quote(product) + "(?![\\p{L}\\d])")
                        .matcher(text)
                        .replaceAll(" ");
        Optional<String> gainsaid = gainsaid(unnamed, farFromLiterature);
        if (gainsaid.isPresent()) {
            return new Read(Meaning.OPEN, gainsaid.get());
        }
        String rest = LITTLE_IMPURITY
                .matcher(NOTHING_LEFT
                        .matcher(unnamed)
                        .replaceAll(m -> ABOUT_THE_PRODUCT.matcher(m.group()).matches()
                                ? Matcher.quoteReplacement(m.group())
                                : " "))
                .replaceAll(" ");
        if (rest.indexOf('?') >= 0 || rest.indexOf('\u2260') >= 0) {
            return new Read(Meaning.OPEN, rest.indexOf('?') >= 0 ? "?" : "\u2260");
        }
        Matcher words = WORDS.matcher(rest);
        boolean evidence = false;
        while (words.find()) {
            // letters that only look alike in lower case are none of a list's
            String meaning = MEANINGS.getOrDefault(key(words.group()), "denies");
            if (meaning.equals("denies")) {
                return new Read(Meaning.OPEN, words.group());
            }
            evidence |= meaning.equals("evidence");
        }
        return evidence
                ? unknownWord(LITTLE_ELSE.matcher(rest).replaceAll(" "))
                        .map(word -> new Read(Meaning.UNKNOWN, word))
                        .orElseGet(() -> new Read(Meaning.EVIDENCE, ""))
                : new Read(Meaning.UNKNOWN, text);
    }

    /** What speaks against one substance, or against the one of the literature. */
    private static Optional<String> gainsaid(String text, DoubleSupplier farFromLiterature) {
        Matcher several = SEVERAL.matcher(text);
        if (several.find()) {
            return Optional.of(several.group());
        }
        Matcher literature = WITH_LITERATURE.matcher(text);
        while (literature.find()) {
            double least = number(literature.group(1));
            double most = literature.group(2) == null ? least : number(literature.group(2));
            double from = number(literature.group(3));
            double to = literature.group(4) == null ? from : number(literature.group(4));
            if (Math.max(least, from) - Math.min(most, to) > farFromLiterature.getAsDouble()) {
                return Optional.of(literature.group());
            }
        }
        return Optional.empty();
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }

    /** The first word of no list that could say that it is something else, whether it has a capital or stands behind a hyphen. */
    private static Optional<String> unknownWord(String text) {
        String unnamed = PERSON.matcher(text).replaceAll(" ");
        return Stream.of(WORDS.matcher(unnamed).replaceAll(" ").split("[\\s,;:=+&/]+"))
                .map(word -> word.replaceAll("^[^\\p{L}\\d]+|[^\\p{L}\\d]+$", ""))
                .filter(word -> saysSomething(word)
                        || text.strip().startsWith(word)
                                && FIRST_WORD.matcher(word).matches())
                .findFirst();
    }

    private static boolean saysSomething(String word) {
        return word.chars().allMatch(c -> Character.isLetter(c) || c == '-' || c == '\'')
                && Stream.of(word.split("[-']"))
                        .anyMatch(part -> WORD.matcher(part).matches());
    }
}
