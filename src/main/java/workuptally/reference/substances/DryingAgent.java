package workuptally.reference.substances;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cells;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;

/**
 * Drying agent for organic layers. Capacity is not performance: the practical range is a rule of thumb.
 *
 * @param key key of the row
 * @param name full name
 * @param aliases other names
 * @param cas registry number
 * @param formula formula of the dry form
 * @param molarMassGramsPerMole g/mol of the dry form
 * @param hydrate form the theoretical uptake is computed from
 * @param theoreticalUptakeGramsPerGram water per dry agent, g/g
 * @param practicalUptakeLowGramsPerGram low end of the practical range, g/g
 * @param practicalUptakeHighGramsPerGram high end of the practical range, g/g
 * @param character acid or base character
 * @param avoidWith what it must not meet
 * @param note remark
 * @param sources keys of the bibliography
 * @param basis how firmly the row is known: the weakest of its parts
 */
public record DryingAgent(
        String key,
        String name,
        List<String> aliases,
        String cas,
        Optional<String> formula,
        OptionalDouble molarMassGramsPerMole,
        String hydrate,
        double theoreticalUptakeGramsPerGram,
        double practicalUptakeLowGramsPerGram,
        double practicalUptakeHighGramsPerGram,
        String character,
        String avoidWith,
        Optional<String> note,
        List<String> sources,
        Basis basis)
        implements Cited {
    /** Copies the lists. */
    public DryingAgent {
        aliases = List.copyOf(aliases);
        sources = List.copyOf(sources);
    }

    static DryingAgent of(Cells row) throws IllegalReferenceException {
        return new DryingAgent(
                row.text("key"),
                row.text("name"),
                row.list("aliases"),
                row.text("cas"),
                row.optionalText("formula"),
                row.optionalNumber("molar mass (g/mol)", 1, 2000),
                row.text("hydrate"),
                row.number("theoretical uptake (g/g)", 0, 3),
                row.number("practical uptake low (g/g)", 0, 3),
                row.number("practical uptake high (g/g)", 0, 3),
                row.text("character"),
                row.text("avoid with"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "drying-agents";
    }
}
