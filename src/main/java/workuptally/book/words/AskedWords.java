package workuptally.book.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Words that may mean one of two values of a choice, with what to write instead: those of {@code asked-words.csv}. */
final class AskedWords {
    private static final String WORDS = "/workuptally/book/asked-words.csv";

    private final Map<Class<?>, Map<String, String>> byWord = new HashMap<>();
    private final UnaryOperator<String> spelling;

    /**
     * The words that come with the program.
     *
     * @param spelling brings words to the form in which they are compared
     */
    AskedWords(UnaryOperator<String> spelling) {
        this.spelling = spelling;
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (InputStream file = AskedWords.class.getResourceAsStream(WORDS);
                CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            for (CSVRecord row : rows) {
                Map<String, String> ofChoice =
                        byWord.computeIfAbsent(ChoiceSynonyms.choice(row.get("choice")), c -> new HashMap<>());
                for (String word : row.get("words").split(";")) {
                    ofChoice.put(spelling.apply(word), row.get("ask"));
                }
            }
        } catch (IOException damaged) {
            throw new UncheckedIOException(damaged);
        }
    }

    /** What to write instead of the word. */
    Optional<String> find(Class<?> choice, String text) {
        return Optional.ofNullable(byWord.getOrDefault(choice, Map.of()).get(spelling.apply(text)));
    }
}
