package workuptally.judgement.hazards;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.material.Material;
import workuptally.model.Field.Entered;
import workuptally.reference.Reference;
import workuptally.reference.hazards.ConcentrationLimit;
import workuptally.reference.hazards.Hazard;
import workuptally.reference.substances.MaterialClass;
import workuptally.tally.amounts.Substances;

/**
 * Statements of a mixture that follow from limits of concentration of its parts: those of each part by itself, and burns and irritation of
 * several parts together.
 *
 * <p>Parts of one effect add up, each over its own limit: Regulation (EC) 1272/2008, Annex I, 3.2.3.3.2 and 3.3.3.3 with tables 3.2.3 and
 * 3.3.3; parts without a limit of their own count over the generic one where another part has its own. Where a pH was read, acids count from pH 2 down and bases from pH 11.5 up only, since what has
 * neutralised each other is a salt.
 */
final class PartStatements {
    /** Up to this pH a mixture is corrosive. Source: the regulation, Annex I, 3.2.3.1.2. */
    static final double ACIDIC_UP_TO_PH = 2;
    /** From this pH on a mixture is corrosive. Source: the regulation, Annex I, 3.2.3.1.2. */
    static final double ALKALINE_FROM_PH = 11.5;

    static final String BURNS = "H314";
    static final String REGULATION = "Regulation (EC) 1272/2008, Annex I, 3.2.3 and 3.3.3";

    private static final List<String> IRRITATION = List.of("H315", "H319");
    private static final Set<String> ACIDS = Set.of(MaterialClass.ACID);
    private static final Set<String> BASES =
            Set.of(MaterialClass.BASE, MaterialClass.CARBONATE, MaterialClass.BASE_WEAK);

    private final Reference reference;
    private final Substances substances;

    PartStatements(Substances substances) {
        this.substances = substances;
        this.reference = substances.reference();
    }

    /** Shares of the parts, mass %; none of a portion without mass. */
    static Map<String, Double> percents(Map<String, Double> grams) {
        double total = grams.values().stream().mapToDouble(Double::doubleValue).sum();
        Map<String, Double> percents = new LinkedHashMap<>();
        if (total > 0) {
            grams.forEach((name, mass) -> percents.put(name, 100 * mass / total));
        }
        return percents;
    }

    /**
     * Adds what the shares bring.
     *
     * @param percents share of each part, mass %
     * @param pH as read; empty where it was not
     */
    void say(Map<String, Double> percents, Optional<Entered> pH, Said said) {
        percents.forEach((name, percent) -> alone(name, percent, pH, said));
        List<String> burns = reaching(percents, pH, BURNS);
        if (!burns.isEmpty()) {
            said.codes().add(BURNS);
            said.sources().add(REGULATION);
            if (burns.size() > 1) {
                said.words().add("Together they reach the limit for burns: " + String.join(", ", burns) + ".");
            }
            return;
        }
        for (String code : IRRITATION) {
            if (!reaching(percents, pH, code).isEmpty()) {
                said.codes().add(code);
                said.sources().add(REGULATION);
            }
        }
    }

    /** Statements whose limits, those of the part itself, include its share. */
    private void alone(String name, double percent, Optional<Entered> pH, Said said) {
        Material material = substances.material(name);
        if (isThere(material, pH)) {
            material.hazard()
                    .ifPresent(hazard -> reference.concentrationLimits().findAll(hazard.key()).stream()
                            .filter(limit -> limit.holdsAt(percent))
                            .map(ConcentrationLimit::statement)
                            .forEach(said.codes()::add));
        }
    }

    /** The parts that together reach the limit of a statement, each with its share; empty where they do not, or where none has a limit of its own. */
    private List<String> reaching(Map<String, Double> percents, Optional<Entered> pH, String code) {
        double sum = 0;
        boolean own = false;
        List<String> parts = new ArrayList<>();
        for (Map.Entry<String, Double> part : percents.entrySet()) {
            Material material = substances.material(part.getKey());
            OptionalDouble limit = material.hazard().map(h -> limit(h, code)).orElse(OptionalDouble.empty());
            boolean generic = limit.isEmpty()
                    && part.getValue() >= MixtureRules.RELEVANT_PERCENT
                    && material.hazard()
                            .filter(h -> h.statements().contains(code))
                            .isPresent();
            if ((limit.isPresent() || generic) && isThere(material, pH)) {
                own |= limit.isPresent();
                sum += part.getValue()
                        / limit.orElse(
                                code.equals(BURNS) ? MixtureRules.BURNS_PERCENT : MixtureRules.IRRITATES_PERCENT);
                parts.add(part.getKey() + String.format(Locale.ROOT, " %.2g %%", part.getValue()));
            }
        }
        return own && sum >= 1 ? parts : List.of();
    }

    /** Least share from which a material with limits of its own has the statement. */
    private OptionalDouble limit(Hazard hazard, String code) {
        return reference.concentrationLimits().findAll(hazard.key()).stream()
                .filter(limit -> limit.statement().equals(code))
                .mapToDouble(ConcentrationLimit::fromMassPercent)
                .filter(limit -> limit > 0)
                .min();
    }

    private static boolean isThere(Material material, Optional<Entered> pH) {
        if (pH.isEmpty()) {
            return true;
        }
        Entered reading = pH.get();
        boolean acid = material.classes().stream().anyMatch(ACIDS::contains);
        boolean base = material.classes().stream().anyMatch(BASES::contains);
        return !(acid && !base && reading.value() - reading.halfWidth() > ACIDIC_UP_TO_PH
                || base && !acid && reading.value() + reading.halfWidth() < ALKALINE_FROM_PH);
    }
}
