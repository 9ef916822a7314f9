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
     * Triangular distribution within ±a, u = a/√6: values near the middle are likelier, as for a volume made up to a mark. Source: JCGM
     * 100:2008, 4.3.9.
     *
     * @param halfWidth a, 0 or more
     * @throws IllegalArgumentException if negative or not finite
     */
    public static double triangular(double halfWidth) {
        return checked(halfWidth) / Math.sqrt(6);
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

    /**
     * Independent parts together, u = √Σuᵢ². Source: JCGM 100:2008, 5.1.2.
     *
     * @param parts each 0 or more
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public static double combined(double... parts) {
        double sum = 0;
        for (double part : parts) {
            sum += checked(part) * part;
        }
        return Math.sqrt(sum);
    }

    private static double checked(double part) {
        if (!(part >= 0) || !Double.isFinite(part)) {
            throw new IllegalArgumentException("uncertainty part " + part);
        }
        return part;
    }
}
