package workuptally.judgement.hazards;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import workuptally.reference.ConcentrationLimit;
import workuptally.reference.Hazard;
import workuptally.reference.Reference;
import workuptally.reference.Wash;

/**
 * Strength of a solution in water by its name, and the hazard statements that are left at that strength. A strength that is not known, or
 * another solvent, leaves every statement of the strong material.
 */
final class SolutionStrength {
    private static final Pattern PERCENT = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*%");
    /** Water named as the solvent changes nothing; anything else behind "in" does. */
    private static final Pattern OTHER_SOLVENT = Pattern.compile("(?i)\\bin\\s+(?!water\\b)|/|\\+");

    private final Reference reference;

    SolutionStrength(Reference reference) {
        this.reference = reference;
    }

    /** Strength in water, mass %; empty where it is not known or the material has no concentration limits. */
    OptionalDouble massPercent(String name, Hazard hazard) {
        if (reference.concentrationLimits(hazard.key()).isEmpty()
                || OTHER_SOLVENT.matcher(name).find()) {
            return OptionalDouble.empty();
        }
        OptionalDouble listed = reference
                .wash(name)
                .filter(w -> w.solute()
                        .flatMap(reference::hazard)
                        .filter(h -> h.key().equals(hazard.key()))
                        .isPresent())
                .map(Wash::massPercent)
                .orElse(OptionalDouble.empty());
        return listed.isPresent() ? listed : typed(name);
    }

    private static OptionalDouble typed(String name) {
        Matcher matcher = PERCENT.matcher(name);
        if (!matcher.find()) {
            return OptionalDouble.empty();
        }
        double percent = Double.parseDouble(matcher.group(1).replace(',', '.'));
        return percent <= 100 && !matcher.find() ? OptionalDouble.of(percent) : OptionalDouble.empty();
    }

    /** Codes that hold at a strength: those without a limit, then those whose limits include it. */
    List<String> statements(Hazard hazard, double massPercent) {
        List<ConcentrationLimit> limits = reference.concentrationLimits(hazard.key());
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
