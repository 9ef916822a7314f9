package workuptally.reference.substances;

import java.util.List;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * An element whose compounds are collected apart.
 *
 * @param element symbol
 * @param words words that name it in a material
 * @param classes material classes that a compound has by holding it
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record Metal(String element, List<String> words, List<String> classes, List<String> sources, Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Metal {
        words = List.copyOf(words);
        classes = List.copyOf(classes);
        sources = List.copyOf(sources);
    }

    static Metal of(ReferenceCells row) throws IllegalReferenceException {
        return new Metal(
                row.text("element"), row.list("words"), row.list("classes"), row.sources("source"), row.basis("basis"));
    }

    @Override
    public String table() {
        return "metals";
    }

    @Override
    public String key() {
        return element;
    }
}
