package workuptally.judgement.hazards;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.material.Material;
import workuptally.reference.Reference;
import workuptally.reference.hazards.ConcentrationLimit;
import workuptally.reference.hazards.Hazard;

/**
 * Strength of a solution in water by its name, and the hazard statements that are left at that strength. A strength that is not known, or
 * another solvent, leaves every statement of the strong material.
 */
final class SolutionStrength {
    private final Reference reference;

    SolutionStrength(Reference reference) {
        this.reference = reference;
    }

    /** Strength in water, mass %; empty where it is not known or the material has no concentration limits. */
    OptionalDouble massPercent(Material material, Hazard hazard) {
        return reference.concentrationLimits().findAll(hazard.key()).isEmpty()
                ? OptionalDouble.empty()
                : material.massPercentInWater();
    }

    /** Codes that hold at a strength: those without a limit, then those whose limits include it. */
    List<String> statements(Hazard hazard, double massPercent) {
        List<ConcentrationLimit> limits = reference.concentrationLimits().findAll(hazard.key());
        Set<String> codes = new LinkedHashSet<>(hazard.statements());
        limits.forEach(limit -> codes.remove(limit.statement()));
        limits.stream()
                .filter(limit -> limit.holdsAt(massPercent))
                .map(ConcentrationLimit::statement)
                .forEach(codes::add);
        return List.copyOf(codes);
    }

    /** The name of a material with the strength at which it was judged. */
    static String subject(Hazard hazard, double massPercent) {
        return String.format(Locale.ROOT, "%s, %.3g %% by mass", hazard.name(), massPercent);
    }

    /** The caution of the material, said to be that of the strong one where no statement holds. */
    static String caution(Hazard hazard, List<String> statements) {
        return statements.isEmpty()
                ? "Diluted below the classification limits of the annex; treat with the usual care. Of the strong material: "
                        + hazard.caution()
                : hazard.caution();
    }
}
