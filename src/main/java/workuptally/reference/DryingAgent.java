package workuptally.reference;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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
 * @param residualWaterMilligramsPerLitreGas water left in a litre of gas over the agent, mg/L
 * @param speed how fast
 * @param completeness how far
 * @param character acid or base character
 * @param goodFor solvents and products it suits
 * @param avoidWith what it must not meet
 * @param removal how it is taken out
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
        OptionalDouble residualWaterMilligramsPerLitreGas,
        String speed,
        String completeness,
        String character,
        String goodFor,
        String avoidWith,
        String removal,
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
                row.optionalNumber("residual water (mg/L gas)", 0, 100),
                row.text("speed"),
                row.text("completeness"),
                row.text("character"),
                row.text("good for"),
                row.text("avoid with"),
                row.text("removal"),
                row.optionalText("note"),
                row.sources("source"),
                row.basis("basis"));
    }

    @Override
    public String table() {
        return "drying-agents";
    }
}
