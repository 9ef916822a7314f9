package workuptally.reference.hazards;

import java.util.List;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Hazard statement of the EU wording.
 *
 * @param code for example {@code H225}
 * @param phrase wording
 * @param group physical, health, environmental or supplemental (EU)
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record HStatement(
        String code, String phrase, String group, Optional<String> note, List<String> sources, Basis basis)
        implements Cited {
    /** Copies the lists. */
    public HStatement {
        sources = List.copyOf(sources);
    }

    static HStatement of(ReferenceCells row) throws IllegalReferenceException {
        return new HStatement(
                row.text("code"),
                row.text("phrase"),
                row.text("class"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "h-statements";
    }

    @Override
    public String key() {
        return code;
    }
}
