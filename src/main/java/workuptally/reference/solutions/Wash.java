package workuptally.reference.solutions;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Aqueous wash or quench: strength and density at 20 °C, protons it can give or take, gas.
 *
 * @param key key of the row; {@code derived} where the strength was worked out from the solute's tables
 * @param name full name
 * @param aliases other names
 * @param solute full name of the solute; empty for water
 * @param formula formula of the solute
 * @param concentration how strong it is, and its density
 * @param acidMillimolesPerMillilitre protons given to strong base, mmol per mL
 * @param baseMillimolesPerMillilitre protons taken from strong acid, mmol per mL
 * @param gas gas that can be set free
 * @param caution remark on handling
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record Wash(
        String key,
        String name,
        List<String> aliases,
        Optional<String> solute,
        String formula,
        Concentration concentration,
        OptionalDouble acidMillimolesPerMillilitre,
        OptionalDouble baseMillimolesPerMillilitre,
        Optional<GasRelease> gas,
        Optional<String> caution,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public Wash {
        aliases = List.copyOf(aliases);
        sources = List.copyOf(sources);
    }

    static Wash of(ReferenceCells row) throws IllegalReferenceException {
        return new Wash(
                row.text("key"),
                row.text("name"),
                row.list("aliases"),
                row.optionalText("solute"),
                row.text("formula"),
                Concentration.of(row),
                row.optionalNumber("acid (mmol/mL)", 0, 60),
                row.optionalNumber("base (mmol/mL)", 0, 60),
                GasRelease.of(row),
                row.optionalText("caution"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "washes";
    }

    /**
     * How strong a wash is, and its density.
     *
     * @param massPercent anhydrous solute, mass %; absent where the recipe decides
     * @param molarityMolesPerLitre mol/L at 20 °C
     * @param densityGramsPerMillilitre g/mL at 20 °C
     */
    public record Concentration(
            OptionalDouble massPercent,
            OptionalDouble molarityMolesPerLitre,
            OptionalDouble densityGramsPerMillilitre) {
        static Concentration of(ReferenceCells row) throws IllegalReferenceException {
            return new Concentration(
                    row.optionalNumber("mass (%)", 0, 100),
                    row.optionalNumber("molarity (mol/L)", 0, 60),
                    row.optionalNumber("density at 20 C (g/mL)", 0.6, 3));
        }
    }
}
