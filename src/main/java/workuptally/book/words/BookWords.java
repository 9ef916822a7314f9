package workuptally.book.words;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import workuptally.model.Assay;
import workuptally.model.Layer;
import workuptally.model.Step;
import workuptally.reference.words.WordGuess;

/** Words of the choice columns, and the loose comparison by which names, headings and choices are matched. */
public final class BookWords {
    /** Choices on which the evidence about a layer rests. */
    private static final Set<Class<?>> EVIDENCE = Set.of(
            Step.CheckedBy.class,
            Step.Emulsion.class,
            Step.QuenchTest.class,
            Step.Lower.class,
            Layer.Status.class,
            Layer.Phase.class);

    private static final ChoiceSynonyms SYNONYMS = new ChoiceSynonyms(BookWords::spelling);

    private static final AskedWords ASKED = new AskedWords(BookWords::spelling);

    private BookWords() {}

    /** The words of a choice, in order. */
    public static List<String> of(Enum<?>[] values) {
        return Arrays.stream(values).map(BookWords::word).toList();
    }

    /** The word for one value, {@code mother liquor}. */
    public static String word(Enum<?> value) {
        if (value instanceof Assay.Method method) {
            return method.word();
        }
        if (value instanceof Assay.Unit unit) {
            return unit.word();
        }
        if (value instanceof Step.Operation operation) {
            return operation.word();
        }
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * The value a word or phrase names, or a synonym of it, without regard to case, spaces, hyphens and the -ize or -ise of an operation.
     */
    public static <E extends Enum<E>> Optional<E> find(E[] values, String text) {
        for (E value : values) {
            if (word(value).equals(text)) {
                return Optional.of(value);
            }
        }
        return text.isBlank() || values.length == 0
                ? Optional.empty()
                : ChoicePhrase.find(
                        text, EVIDENCE.contains(values[0].getDeclaringClass()), phrase -> exact(values, phrase));
    }

    private static <E extends Enum<E>> Optional<E> exact(E[] values, String text) {
        String wanted = spelling(text);
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        for (E value : values) {
            if (spelling(word(value)).equals(wanted)) {
                return Optional.of(value);
            }
        }
        return SYNONYMS.find(values[0].getDeclaringClass(), text);
    }

    /** The one value of which a word is a slip of the pen, {@code wahs} of wash. */
    public static <E extends Enum<E>> Optional<E> guess(E[] values, String text) {
        String typed = spelling(text);
        Set<E> near = values.length == 0 ? Set.of() : SYNONYMS.slips(values[0].getDeclaringClass(), typed);
        Set<E> all = new LinkedHashSet<>(near);
        for (E value : values) {
            if (WordGuess.isSlipOf(typed, spelling(word(value)))) {
                all.add(value);
            }
        }
        return all.size() == 1 ? Optional.of(all.iterator().next()) : Optional.empty();
    }

    /** What to write instead of a word that may mean one value or another; empty for any other word. */
    public static <E extends Enum<E>> Optional<String> ask(E[] values, String text) {
        return values.length == 0 ? Optional.empty() : ASKED.find(values[0].getDeclaringClass(), text);
    }

    private static String spelling(String text) {
        String loose = loose(text);
        return loose.endsWith("ize")
                ? loose.substring(0, loose.length() - 3) + "ise"
                : loose.equals("distill") ? "distil" : loose;
    }

    /** A name reduced to what counts when it is compared: no case, spaces, hyphens, underscores, dots or invisible characters. */
    public static String loose(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int c = text.codePointAt(i);
            boolean counts = c <= '~' ? c > ' ' && c != '-' && c != '_' && c != '.' : countsWhenCompared(c);
            if (counts) {
                kept.appendCodePoint(c);
            }
        }
        return kept.toString().toLowerCase(Locale.ROOT);
    }

    private static boolean countsWhenCompared(int c) {
        return !Character.isWhitespace(c)
                && !Character.isSpaceChar(c)
                && Character.getType(c) != Character.FORMAT
                && Character.getType(c) != Character.DASH_PUNCTUATION;
    }

    /** A text with every kind of space made one plain space, invisible and broken characters dropped and the ends trimmed. */
    public static String tidy(String text) {
        if (isPlain(text)) {
            return text;
        }
        StringBuilder kept = new StringBuilder(text.length());
        boolean space = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
                space = kept.length() > 0;
            } else if (Character.getType(c) != Character.FORMAT && !Character.isISOControl(c) && isWhole(text, i)) {
                if (space) {
                    kept.append(' ');
                    space = false;
                }
                kept.append(c);
            }
        }
        return kept.toString();
    }

    /** False for half of a character beyond U+FFFF, and for the two codes that are no characters: neither can be written again. */
    private static boolean isWhole(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1));
        }
        if (Character.isLowSurrogate(c)) {
            return i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
        }
        return c < '\uFFFE';
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c <= ' ' || c > '~') {
                return false;
            }
        }
        return true;
    }
}
