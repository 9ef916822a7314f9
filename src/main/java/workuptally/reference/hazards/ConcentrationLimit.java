package workuptally.reference.hazards;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Strengths at which a solution of a material in water carries a hazard statement.
 *
 * @param hazard key of the {@link Hazard}
 * @param statement code of the hazard statement
 * @param fromMassPercent least strength, mass %, included
 * @param belowMassPercent upper end, mass %, not included; absent where there is none
 * @param note class and category, or what kind of limit it is
 * @param sources keys of the bibliography
 * @param basis how firmly it is known
 */
public record ConcentrationLimit(
        String hazard,
        String statement,
        double fromMassPercent,
        OptionalDouble belowMassPercent,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the list. */
    public ConcentrationLimit {
        sources = List.copyOf(sources);
    }

    static ConcentrationLimit of(ReferenceCells row) throws IllegalReferenceException {
        return new ConcentrationLimit(
                row.text("hazard"),
                row.text("h-statement"),
                row.number("from (mass %)", 0, 100),
                row.optionalNumber("below (mass %)", 0, 100),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "concentration-limits";
    }

    @Override
    public String key() {
        return hazard + " " + statement;
    }

    /** True at a strength, mass %. */
    public boolean holdsAt(double massPercent) {
        return massPercent >= fromMassPercent && massPercent < belowMassPercent.orElse(Double.POSITIVE_INFINITY);
    }
}
