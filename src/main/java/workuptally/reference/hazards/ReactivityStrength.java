package workuptally.reference.hazards;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Below which strength in water a material no longer counts as its class.
 *
 * @param strongClass class of the strong material
 * @param belowMassPercent strength, mass per cent
 * @param belowMolesPerLitre the same strength in mol/L
 * @param weakClasses classes of the weaker solution
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known
 */
public record ReactivityStrength(
        String strongClass,
        double belowMassPercent,
        double belowMolesPerLitre,
        List<String> weakClasses,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public ReactivityStrength {
        weakClasses = List.copyOf(weakClasses);
        sources = List.copyOf(sources);
    }

    static ReactivityStrength of(ReferenceCells row) throws IllegalReferenceException {
        return new ReactivityStrength(
                row.text("class"),
                row.number("below (mass %)", 0, 100),
                row.number("below (mol/L)", 0, 100),
                row.list("classes instead"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    /** Whether a solution of this strength is weaker; where neither is known it is not. */
    public boolean weakens(OptionalDouble massPercent, OptionalDouble molesPerLitre) {
        return massPercent.isPresent()
                ? massPercent.getAsDouble() < belowMassPercent
                : molesPerLitre.isPresent() && molesPerLitre.getAsDouble() < belowMolesPerLitre;
    }

    @Override
    public String table() {
        return "reactivity-strengths";
    }

    @Override
    public String key() {
        return strongClass;
    }
}
