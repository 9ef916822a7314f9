package workuptally.material;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import workuptally.reference.NameWord;

/** The words that stand around names, found by phrase; German endings may follow any of them. */
final class NameWords {
    private static final List<String> ENDINGS = List.of("es", "er", "en", "em", "e");
    private static final int SHORTEST_INFLECTED = 5;

    private final Map<String, NameWord> byPhrase = new HashMap<>();
    private final List<NameWord> suffixes = new ArrayList<>();
    private final int longestPhrase;

    NameWords(List<NameWord> words) {
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

    /** A support written behind a stroke, {@code /C}. */
    Optional<NameWord> suffix(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        return suffixes.stream()
                .filter(word -> plain.length() > word.word().length()
                        && plain.endsWith(word.word().toLowerCase(Locale.ROOT)))
                .findFirst();
    }
}
