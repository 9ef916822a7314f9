package workuptally.reference;

import java.util.List;

/**
 * An element that counts as a heavy metal for layers, streams and labels.
 *
 * @param symbol symbol of the element
 * @param name English name
 * @param words words that name it in a material
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record HeavyMetal(String symbol, String name, List<String> words, List<String> sources, Basis basis)
        implements Cited {
    /** Copies the lists. */
    public HeavyMetal {
        words = List.copyOf(words);
        sources = List.copyOf(sources);
    }

    static HeavyMetal of(Cells row) throws IllegalReferenceException {
        return new HeavyMetal(
                row.text("symbol"), row.text("name"), row.list("words"), row.sources("source"), row.basis("basis"));
    }

    @Override
    public String table() {
        return "heavy-metals";
    }

    @Override
    public String key() {
        return symbol;
    }
}
