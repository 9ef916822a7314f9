package workuptally.material;

import java.util.OptionalDouble;

/**
 * How much of a material is in what was used.
 *
 * @param kind what the value means
 * @param value the figure; empty for words such as saturated
 */
public record Strength(Kind kind, OptionalDouble value) {
    /** What a strength is told in. */
    public enum Kind {
        /** Mass per cent. */
        MASS_PERCENT,
        /** Per cent by volume before mixing. */
        VOLUME_PERCENT,
        /** Grams in 100 mL. */
        GRAMS_PER_100_MILLILITRES,
        /** mol/L. */
        MOLES_PER_LITRE,
        /** mol of protons given or taken per litre. */
        EQUIVALENTS_PER_LITRE,
        /** Saturated in water. */
        SATURATED,
        /** Saturated, mixed with its own volume of water. */
        HALF_SATURATED,
        /** As it is sold concentrated. */
        CONCENTRATED,
        /** Dilute, without a figure. */
        DILUTE
    }

    static Strength of(Kind kind, double value) {
        return new Strength(kind, OptionalDouble.of(value));
    }

    static Strength inWords(Kind kind) {
        return new Strength(kind, OptionalDouble.empty());
    }

    /** True where the strength is that of a solution in water unless another solvent is named. */
    boolean meansWater() {
        return switch (kind) {
            case SATURATED, HALF_SATURATED, CONCENTRATED, DILUTE -> true;
            default -> false;
        };
    }
}
