package workuptally.reference;

import java.util.List;
import java.util.Optional;

/**
 * Solute of washes and quenches: protons it gives or takes and gas it can set free.
 *
 * @param name full name
 * @param aliases other names and formulas
 * @param formula formula
 * @param cas registry number
 * @param molarMassGramsPerMole g/mol
 * @param acidMolesPerMole protons given to strong base per mole
 * @param baseMolesPerMole protons taken from strong acid per mole
 * @param gas gas that can be set free
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record Solute(
        String name,
        List<String> aliases,
        String formula,
        String cas,
        double molarMassGramsPerMole,
        double acidMolesPerMole,
        double baseMolesPerMole,
        Optional<GasRelease> gas,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Solute {
        aliases = List.copyOf(aliases);
        sources = List.copyOf(sources);
    }

    static Solute of(Cells row) throws IllegalReferenceException {
        return new Solute(
                row.text("name"),
                row.list("aliases"),
                row.text("formula"),
                row.text("cas"),
                row.number("molar mass (g/mol)", 1, 2000),
                row.number("acid (mol/mol)", 0, 10),
                row.number("base (mol/mol)", 0, 10),
                GasRelease.of(row),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "solutes";
    }

    @Override
    public String key() {
        return name;
    }
}
