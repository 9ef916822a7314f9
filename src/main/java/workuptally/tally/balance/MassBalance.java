package workuptally.tally.balance;

import java.util.List;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;

/**
 * Everything that went into a workup against everything that came out and was weighed.
 *
 * @param inGrams charges, quench, washes, agent and rinse, g
 * @param outGrams layers, lots, cakes, distillates and aliquots, g
 * @param gasGrams gas expected to have left, g
 * @param organicSolventGrams organic solvent that went in, as such, in a blend or as what a reagent is dissolved in, g
 * @param evaporationAllowanceGrams allowance for evaporation, g
 * @param complete false where a terminal layer or lot has no mass, so that the gap is only an upper limit
 * @param lines the parts, in first
 */
public record MassBalance(
        MeasuredValue inGrams,
        MeasuredValue outGrams,
        double gasGrams,
        double organicSolventGrams,
        double evaporationAllowanceGrams,
        boolean complete,
        List<Line> lines) {
    /** Copies the list. */
    public MassBalance {
        lines = List.copyOf(lines);
    }

    /** What went in and did not come out, g. */
    public MeasuredValue gapGrams() {
        return inGrams.minus(outGrams);
    }

    /** Gap as a percentage of the organic solvent charged, %; empty without organic solvent. */
    public OptionalDouble gapPercentOfOrganic() {
        return organicSolventGrams == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(100 * gapGrams().value() / organicSolventGrams);
    }

    /**
     * One part.
     *
     * @param side in or out
     * @param label material or layer
     * @param category what it is
     * @param grams mass, g
     */
    public record Line(Side side, String label, Category category, MeasuredValue grams) {}

    /** What is on the balance. */
    public enum Category {
        CHARGE,
        WORKUP,
        LAYER,
        LOT,
        CAKE,
        DISTILLATE,
        ALIQUOT;

        /** The word in reports. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** Side of the balance. */
    public enum Side {
        IN,
        OUT
    }
}
