package workuptally.reference.substances;

import java.util.List;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * What becomes of a class of materials in a workup.
 *
 * @param materialClass the class
 * @param meaning what belongs to it
 * @param persistent true where it stays in the layers of a run until an entry shows otherwise
 * @param goneWithWater true where water destroys it
 * @param shownGoneByTest true where only a negative quench test takes it away
 * @param reactsWithWater true where it is quenched cold and in the open
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record ClassBehaviour(
        String materialClass,
        Optional<String> meaning,
        boolean persistent,
        boolean goneWithWater,
        boolean shownGoneByTest,
        boolean reactsWithWater,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the list. */
    public ClassBehaviour {
        sources = List.copyOf(sources);
    }

    static ClassBehaviour of(ReferenceCells row) throws IllegalReferenceException {
        return new ClassBehaviour(
                row.text("class"),
                row.optionalText("meaning"),
                row.yes("persistent"),
                row.yes("gone with water"),
                row.yes("shown gone by a test"),
                row.yes("reacts with water"),
                row.sources("source"),
                row.basis("basis"));
    }

    /** True where the class is not in a layer for good: water or a test takes it away. */
    public boolean isTransient() {
        return goneWithWater || shownGoneByTest;
    }

    @Override
    public String table() {
        return "class-behaviours";
    }

    @Override
    public String key() {
        return materialClass;
    }
}
