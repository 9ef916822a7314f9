package workuptally.measure;

/** Standard uncertainties from limits, readabilities and repeatabilities; each in the unit of what goes in. */
public final class StandardUncertainty {
    private StandardUncertainty() {}

    /**
     * Rectangular distribution within ±a, u = a/√3: a limit with nothing said about where inside. Source: JCGM 100:2008, 4.3.7.
     *
     * @param halfWidth a, 0 or more
     * @throws IllegalArgumentException if negative or not finite
     */
    public static double rectangular(double halfWidth) {
        return checked(halfWidth) / Math.sqrt(3);
    }

    /**
     * Reading of a display with step d, u = d/(2√3). Source: JCGM 100:2008, F.2.2.1.
     *
     * @param step d, 0 or more
     * @throws IllegalArgumentException if negative or not finite
     */
    public static double ofStep(double step) {
        return rectangular(step / 2);
    }

    private static double checked(double part) {
        if (!(part >= 0) || !Double.isFinite(part)) {
            throw new IllegalArgumentException("uncertainty part " + part);
        }
        return part;
    }
}
