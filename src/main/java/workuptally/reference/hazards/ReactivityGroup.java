package workuptally.reference.hazards;

import java.util.List;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * A class of materials that react alike.
 *
 * @param key key of the row; groups of the published chart begin with {@code epa-}
 * @param name name for the reader
 * @param definition what belongs to it
 * @param parentClasses coarser classes that hold this one
 * @param laboratoryClasses for a chart group, the classes of a laboratory that fall into it
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record ReactivityGroup(
        String key,
        String name,
        String definition,
        List<String> parentClasses,
        List<String> laboratoryClasses,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public ReactivityGroup {
        parentClasses = List.copyOf(parentClasses);
        laboratoryClasses = List.copyOf(laboratoryClasses);
        sources = List.copyOf(sources);
    }

    static ReactivityGroup of(ReferenceCells row) throws IllegalReferenceException {
        return new ReactivityGroup(
                row.text("key"),
                row.text("name"),
                row.text("definition"),
                row.list("parent classes"),
                row.list("laboratory classes"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "reactivity-groups";
    }
}
