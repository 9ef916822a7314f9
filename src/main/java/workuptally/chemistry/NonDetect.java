package workuptally.chemistry;

/**
 * A substance looked for and not found, with the limit of the method.
 *
 * <p>In a balance it counts as half the limit with u = L/(2√3), the rectangular distribution from 0 to the limit (JCGM 100:2008, 4.3.7); in a
 * bound it counts as the limit.
 *
 * @param limit detection limit L, any unit, above 0
 */
public record NonDetect(double limit) {
    /** Checks the limit. */
    public NonDetect {
        Require.positive(limit, "limit");
    }

    /** L/2, the value in a balance. */
    public double value() {
        return limit / 2;
    }

    /** L/(2√3), its standard uncertainty. */
    public double standardUncertainty() {
        return limit / (2 * Math.sqrt(3));
    }

    /** L, the value in a bound. */
    public double upperBound() {
        return limit;
    }
}
