package workuptally.tally.waste;

import java.util.Map;
import java.util.function.Predicate;
import workuptally.reference.substances.MaterialClass;
import workuptally.tally.amounts.Substances;

/** How much of a portion is organic, halogenated or an organic acid: what the rules for waste streams ask of a liquid. */
public final class SolventContent {
    private final Substances substances;
    private final Map<String, Double> grams;

    /**
     * Of a portion.
     *
     * @param grams mass of each component, g
     */
    public SolventContent(Substances substances, Map<String, Double> grams) {
        this.substances = substances;
        this.grams = grams;
    }

    /** Halogenated solvents and materials, mass %; 0 of nothing. */
    public double halogenatedPercent() {
        return percent(name -> substances
                .solvent(name)
                .map(s -> s.hazards().halogenated())
                .orElseGet(() -> substances.material(name).is(MaterialClass.HALOGENATED)));
    }

    /** Organic acid that serves as a solvent, mass %; 0 of nothing. */
    public double acidPercent() {
        return percent(name ->
                substances.isOrganicSolvent(name) && substances.material(name).is(MaterialClass.ACID));
    }

    /** Organic solvents, mass %; 0 of nothing. */
    public double organicPercent() {
        return percent(substances::isOrganicSolvent);
    }

    /** Whatever counts, mass %; 0 of nothing. */
    public double percent(Predicate<String> counts) {
        double total = grams.values().stream().mapToDouble(g -> g).sum();
        return total <= 0
                ? 0
                : 100
                        * grams.entrySet().stream()
                                .filter(e -> counts.test(e.getKey()))
                                .mapToDouble(Map.Entry::getValue)
                                .sum()
                        / total;
    }
}
