package workuptally.reference.substances;

import java.util.List;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * An oxidant that a workup quenches with thiosulfate.
 *
 * @param key key of the row
 * @param name name
 * @param aliases other names
 * @param formula formula
 * @param reductantForLeftOver mol thiosulfate per mol of oxidant not used by the reaction
 * @param reductantForUsed mol thiosulfate per mol of oxidant that the reaction used
 * @param acidSetFree mol acid per mol of oxidant charged, set free by quench and water
 * @param acid which acid, or none
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly it is known
 */
public record Oxidant(
        String key,
        String name,
        List<String> aliases,
        String formula,
        double reductantForLeftOver,
        double reductantForUsed,
        double acidSetFree,
        String acid,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Oxidant {
        aliases = List.copyOf(aliases);
        sources = List.copyOf(sources);
    }

    static Oxidant of(ReferenceCells row) throws IllegalReferenceException {
        return new Oxidant(
                row.text("key"),
                row.text("name"),
                row.list("aliases"),
                row.text("formula"),
                row.number("reductant for left over (mol/mol)", 0, 20),
                row.number("reductant for used (mol/mol)", 0, 20),
                row.number("acid set free (mol/mol)", 0, 20),
                row.text("acid"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "oxidants";
    }
}
