package workuptally.chemistry;

import java.util.List;

/**
 * Density of liquids: mixtures with additive volumes, and change with temperature.
 *
 * <p>Real mixtures contract or expand by up to 4 % (water and alcohols contract most); common organic pairs stay within 1 %.
 */
public final class Mixture {
    private Mixture() {}

    /**
     * One part of a mixture.
     *
     * @param massGrams g, 0 or more
     * @param densityGramsPerMillilitre g/mL, above 0
     */
    public record Part(double massGrams, double densityGramsPerMillilitre) {
        /** Checks the numbers. */
        public Part {
            Require.notNegative(massGrams, "mass");
            Require.positive(densityGramsPerMillilitre, "density");
        }
    }

    /** Volume of an ideal mixture, V = Σ(m/ρ), mL; 0 for no parts. */
    public static double volumeMillilitres(List<Part> parts) {
        return parts.stream()
                .mapToDouble(part -> part.massGrams() / part.densityGramsPerMillilitre())
                .sum();
    }

    /**
     * Density moved by a known slope, ρ(T) = ρ(20) + s·(T − 20).
     *
     * @param at20GramsPerMillilitre density at 20 °C, g/mL, above 0
     * @param changePerKelvin s, g/mL per K, usually negative
     * @param temperatureCelsius °C; within 40 K of 20 °C the line holds to 0.2 %
     * @return g/mL
     * @throws IllegalArgumentException if the result is not positive
     */
    public static double atTemperature(
            double at20GramsPerMillilitre, double changePerKelvin, double temperatureCelsius) {
        Require.positive(at20GramsPerMillilitre, "density");
        return Require.positive(at20GramsPerMillilitre + changePerKelvin * (temperatureCelsius - 20), "density");
    }

    /**
     * Density moved by an expansion coefficient, ρ(T) = ρ(20)/(1 + α·(T − 20)).
     *
     * @param at20GramsPerMillilitre density at 20 °C, g/mL, above 0
     * @param expansionPerKelvin α, 1/K
     * @param temperatureCelsius °C
     * @return g/mL
     * @throws IllegalArgumentException if the volume would not be positive
     */
    public static double expanded(double at20GramsPerMillilitre, double expansionPerKelvin, double temperatureCelsius) {
        Require.positive(at20GramsPerMillilitre, "density");
        return at20GramsPerMillilitre / Require.positive(1 + expansionPerKelvin * (temperatureCelsius - 20), "volume");
    }
}
