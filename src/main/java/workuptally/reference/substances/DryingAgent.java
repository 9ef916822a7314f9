package workuptally.reference.substances;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.reference.tables.Basis;
import workuptally.reference.tables.Cited;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.ReferenceCells;

/**
 * Drying agent for organic layers. Capacity is not performance: the practical range is a rule of thumb.
 *
 * @param key key of the row
 * @param name full name
 * @param aliases other names
 * @param cas registry number
 * @param dryForm what it is before it takes up water
 * @param uptake water that it binds
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
        DryForm dryForm,
        Uptake uptake,
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

    static DryingAgent of(ReferenceCells row) throws IllegalReferenceException {
        return new DryingAgent(
                row.text("key"),
                row.text("name"),
                row.list("aliases"),
                row.text("cas"),
                DryForm.of(row),
                Uptake.of(row),
                row.text("avoid with"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "drying-agents";
    }

    /**
     * A drying agent before it takes up water, for people.
     *
     * @param formula formula
     * @param molarMassGramsPerMole g/mol
     * @param character acid or base character
     */
    public record DryForm(Optional<String> formula, OptionalDouble molarMassGramsPerMole, String character) {
        private static DryForm of(ReferenceCells row) throws IllegalReferenceException {
            return new DryForm(
                    row.optionalText("formula"),
                    row.optionalNumber("molar mass (g/mol)", 1, 2000),
                    row.text("character"));
        }
    }

    /**
     * Water that a drying agent binds, per mass of it dry.
     *
     * @param hydrate form the theoretical uptake is computed from
     * @param theoreticalGramsPerGram most, g/g
     * @param practicalLowGramsPerGram low end of the practical range, g/g
     * @param practicalHighGramsPerGram high end of the practical range, g/g
     */
    public record Uptake(
            String hydrate,
            double theoreticalGramsPerGram,
            double practicalLowGramsPerGram,
            double practicalHighGramsPerGram) {
        private static Uptake of(ReferenceCells row) throws IllegalReferenceException {
            return new Uptake(
                    row.text("hydrate"),
                    row.number("theoretical uptake (g/g)", 0, 3),
                    row.number("practical uptake low (g/g)", 0, 3),
                    row.number("practical uptake high (g/g)", 0, 3));
        }
    }
}
