package workuptally.book.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Words that may mean one of two values of a choice, with what to write instead: those of {@code asked-words.csv}. */
final class AskedWords {
    private final Map<Class<?>, Map<String, String>> byWord = new HashMap<>();
    private final UnaryOperator<String> spelling;

    /**
     * The words that come with the program.
     *
     * @param spelling brings words to the form in which they are compared
     */
    AskedWords(UnaryOperator<String> spelling) {
        this.spelling = spelling;
        for (WordRow row : WordRow.all("asked-words.csv")) {
            Map<String, String> ofChoice =
                    byWord.computeIfAbsent(ChoiceSynonyms.choice(row.cell("choice")), c -> new HashMap<>());
            for (String word : row.words("words")) {
                ofChoice.put(spelling.apply(word), row.cell("ask"));
            }
        }
    }

    /** What to write instead of the word. */
    Optional<String> find(Class<?> choice, String text) {
        return Optional.ofNullable(byWord.getOrDefault(choice, Map.of()).get(spelling.apply(text)));
    }
}
