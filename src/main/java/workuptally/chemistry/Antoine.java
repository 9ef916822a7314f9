package workuptally.chemistry;

/**
 * Vapour pressure equation log10(p/kPa) = A − B/(T/K + C).
 *
 * <p>Good to 1–3 % inside its range; outside it is a guess, which {@link #holdsAt} tells. Source: the set's own, named in its row.
 *
 * @param a A, dimensionless
 * @param b B, K, above 0
 * @param c C, K
 * @param fromCelsius lower end of validity, °C
 * @param toCelsius upper end of validity, °C
 */
public record Antoine(double a, double b, double c, double fromCelsius, double toCelsius) {
    /** Checks the numbers. */
    public Antoine {
        Require.finite(a, "A");
        Require.positive(b, "B");
        Require.finite(c, "C");
        if (!(fromCelsius < toCelsius)) {
            throw new IllegalArgumentException("range " + fromCelsius + " to " + toCelsius + " °C");
        }
    }

    /** Whether the set is meant for this temperature, °C. */
    public boolean holdsAt(double temperatureCelsius) {
        return temperatureCelsius >= fromCelsius && temperatureCelsius <= toCelsius;
    }

    /**
     * Vapour pressure.
     *
     * @param temperatureCelsius °C; T + C must be above 0
     * @return kPa
     * @throws IllegalArgumentException if T + C is not positive
     */
    public double kilopascals(double temperatureCelsius) {
        double shifted = Require.positive(IdealGas.kelvin(temperatureCelsius) + c, "T + C");
        return Math.pow(10, a - b / shifted);
    }
}
