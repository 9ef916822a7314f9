package workuptally.material;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import workuptally.reference.substances.NameWord;

/** The words that stand around names, found by phrase; German endings may follow any of them. */
final class NameWordSearch {
    private static final List<String> ENDINGS = List.of("es", "er", "en", "em", "e");
    private static final int SHORTEST_INFLECTED = 5;
    private static final Pattern NOT_IN_WORDS = Pattern.compile("[^\\p{L}-]+");

    private final Map<String, NameWord> byPhrase = new HashMap<>();
    private final List<NameWord> suffixes = new ArrayList<>();
    private final int longestPhrase;

    NameWordSearch(List<NameWord> words) {
        int longest = 1;
        for (NameWord word : words) {
            if (word.word().startsWith("/")) {
                suffixes.add(word);
            } else {
                byPhrase.putIfAbsent(word.word().toLowerCase(Locale.ROOT), word);
                longest = Math.max(longest, word.word().split(" ").length);
            }
        }
        longestPhrase = longest;
    }

    /** Most words of a phrase. */
    int longestPhrase() {
        return longestPhrase;
    }

    /** The word that a phrase is. */
    Optional<NameWord> find(String phrase) {
        String plain = phrase.toLowerCase(Locale.ROOT);
        NameWord word = byPhrase.get(plain);
        for (int i = 0; word == null && i < ENDINGS.size(); i++) {
            String ending = ENDINGS.get(i);
            if (plain.length() >= SHORTEST_INFLECTED && plain.endsWith(ending)) {
                word = byPhrase.get(plain.substring(0, plain.length() - ending.length()));
            }
        }
        return Optional.ofNullable(word);
    }

    /** True where a word of a note says that a material was used before. */
    boolean sayRecovered(String note) {
        return NOT_IN_WORDS
                .splitAsStream(note)
                .flatMap(word -> find(word).stream())
                .anyMatch(word -> word.meaning() == NameWord.Meaning.RECOVERED);
    }

    /** A name without its last word, where that tells the water of crystallisation. */
    Optional<String> withoutHydrate(String name) {
        int space = name.lastIndexOf(' ');
        return space > 0
                        && uninflected(name.substring(space + 1))
                                .filter(w -> w.meaning() == NameWord.Meaning.HYDRATE)
                                .isPresent()
                ? Optional.of(name.substring(0, space))
                : Optional.empty();
    }

    /** A name without its first or last word, where that tells a strength in water. */
    Optional<String> withoutStrength(String name) {
        int first = name.indexOf(' ');
        int last = name.lastIndexOf(' ');
        if (first > 0 && tellsStrength(name.substring(0, first))) {
            return Optional.of(name.substring(first + 1));
        }
        return last > 0 && tellsStrength(name.substring(last + 1))
                ? Optional.of(name.substring(0, last))
                : Optional.empty();
    }

    private Optional<NameWord> uninflected(String word) {
        return Optional.ofNullable(byPhrase.get(word.toLowerCase(Locale.ROOT)));
    }

    private boolean tellsStrength(String word) {
        return uninflected(word)
                .filter(w -> switch (w.meaning()) {
                    case SATURATED, HALF_SATURATED, CONCENTRATED, DILUTE, AQUEOUS -> true;
                    default -> false;
                })
                .isPresent();
    }

    /** Length of a word for a solution with which a German compound ends, {@code NaCl-Lösung}, {@code NaCl-Lsg.}; 0 where it ends otherwise. */
    int endingForSolution(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        return byPhrase.values().stream()
                .filter(w -> w.meaning() == NameWord.Meaning.SOLUTION)
                .map(w -> w.word().toLowerCase(Locale.ROOT))
                .filter(w ->
                        plain.endsWith(w.length() >= SHORTEST_INFLECTED ? w : "-" + w) && plain.length() > w.length())
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }

    /** Other ways to write a support behind a name. */
    List<String> spellingsOf(String support) {
        return java.util.stream.Stream.concat(suffixes.stream(), byPhrase.values().stream())
                .filter(w -> w.meaning() == NameWord.Meaning.SUPPORTED
                        && w.value().filter(support::equals).isPresent())
                .map(w -> w.word().startsWith("/") ? w.word() : " " + w.word())
                .distinct()
                .toList();
    }

    /** A support written behind a stroke, {@code /C}. */
    Optional<NameWord> suffix(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        return suffixes.stream()
                .filter(word -> plain.length() > word.word().length()
                        && plain.endsWith(word.word().toLowerCase(Locale.ROOT)))
                .findFirst();
    }
}
