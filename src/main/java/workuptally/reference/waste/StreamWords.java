package workuptally.reference.waste;

import java.util.List;
import java.util.Locale;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Words on a container that tell its waste stream.
 *
 * @param key key of the row
 * @param words words, or parts of them, in lower case
 * @param stream key of the stream
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record StreamWords(String key, List<String> words, String stream, List<String> sources, Basis basis)
        implements Cited {
    /** Copies the lists. */
    public StreamWords {
        words = List.copyOf(words);
        sources = List.copyOf(sources);
    }

    static StreamWords of(ReferenceCells row) throws IllegalReferenceException {
        return new StreamWords(
                row.text("key"),
                row.list("words").stream()
                        .map(word -> word.toLowerCase(Locale.ROOT))
                        .toList(),
                row.text("stream"),
                row.sources("source"),
                row.basis("basis"));
    }

    /** True where one of the words stands in a label, whatever its case. */
    public boolean standIn(String label) {
        String lower = label.toLowerCase(Locale.ROOT);
        return words.stream().anyMatch(lower::contains);
    }

    /** True where a text in lower case begins with one of the words. */
    boolean begin(String text) {
        return words.stream().anyMatch(text::startsWith);
    }

    @Override
    public String table() {
        return "stream-words";
    }
}
