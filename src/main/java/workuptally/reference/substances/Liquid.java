package workuptally.reference.substances;

import java.util.List;
import java.util.Optional;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * A liquid reagent or product that is measured by volume.
 *
 * @param key key of the row
 * @param name name
 * @param aliases other names and formulas
 * @param formula formula of the neat liquid
 * @param cas registry number
 * @param molarMassGramsPerMole g/mol
 * @param densityGramsPerMillilitre g/mL at {@code celsius}
 * @param celsius temperature of the density, 10 to 25 °C
 * @param standardUncertaintyGramsPerMillilitre of the density at a bench within 5 K of that temperature, g/mL, above 0
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the density is known
 */
public record Liquid(
        String key,
        String name,
        List<String> aliases,
        String formula,
        String cas,
        double molarMassGramsPerMole,
        double densityGramsPerMillilitre,
        double celsius,
        double standardUncertaintyGramsPerMillilitre,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Liquid {
        aliases = List.copyOf(aliases);
        sources = List.copyOf(sources);
    }

    static Liquid of(ReferenceCells row) throws IllegalReferenceException {
        return new Liquid(
                row.text("key"),
                row.text("name"),
                row.list("aliases"),
                row.text("formula"),
                row.text("cas"),
                row.number("molar mass (g/mol)", 1, 2000),
                row.number("density (g/mL)", 0.5, 5),
                row.number("at (C)", 0, 40),
                row.number("standard uncertainty (g/mL)", 0.0001, 0.5),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "liquids";
    }
}
