package workuptally.reference.bench;

import java.util.List;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * A usual size of separatory funnel.
 *
 * @param key key of the row
 * @param nominalMillilitres nominal volume, mL
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record Glassware(String key, double nominalMillilitres, List<String> sources, Basis basis) implements Cited {
    /** Copies the list. */
    public Glassware {
        sources = List.copyOf(sources);
    }

    static Glassware of(ReferenceCells row) throws IllegalReferenceException {
        return new Glassware(
                row.text("key"), row.number("nominal (mL)", 0.001, 1e6), row.sources("source"), row.basis("basis"));
    }

    @Override
    public String table() {
        return "glassware";
    }
}
