package workuptally.tally.suspects;

/**
 * One thing that entries of a run must agree in: a residual that has to lie within what the trade allows, and how well it is known.
 *
 * @param name what is compared, for example {@code closure on benzoic acid}
 * @param residual the residual, in its own unit; linear in each entered number alone
 * @param low lowest residual that needs no explanation
 * @param high highest residual that needs no explanation
 * @param standardUncertainty u of the residual, above 0
 * @param scale what the residual is a part of, in its unit, above 0; 1 where it is none
 */
record Check(String name, double residual, double low, double high, double standardUncertainty, double scale) {
    Check(String name, double residual, double low, double high, double standardUncertainty) {
        this(name, residual, low, high, standardUncertainty, 1);
    }

    /** A change along a straight line leaves at least this part of a scale. */
    private static final double MOST_SHRUNK = 1000;

    /** How far outside it lies, in standard uncertainties; 0 within. */
    double off() {
        double outside = residual < low ? residual - low : residual > high ? residual - high : 0;
        return outside / standardUncertainty;
    }

    /**
     * Minus twice the logarithm of how likely this residual is within what is allowed, but for a constant: where it lies, and how wide the
     * window is that it had to meet, since a wide one is met by chance.
     */
    double surprise() {
        double distance = fromMiddle() / width();
        return Math.min(1, distance * distance) + 2 * Math.log(width() / scale);
    }

    /** Distance of the residual from the middle of what is allowed. */
    double fromMiddle() {
        return residual - (low + high) / 2;
    }

    /** Half the window with the uncertainty of what has to meet it. */
    double width() {
        return Math.hypot((high - low) / 2, standardUncertainty);
    }

    /**
     * The check after a change so many times that of another one, along the straight line through this and that.
     *
     * @param other the check after the other change
     * @param times how many times as large the change is
     */
    Check along(Check other, double times) {
        return new Check(
                name,
                residual + times * (other.residual - residual),
                low + times * (other.low - low),
                high + times * (other.high - high),
                Math.max(
                        standardUncertainty / 2,
                        standardUncertainty + times * (other.standardUncertainty - standardUncertainty)),
                Math.max(scale / MOST_SHRUNK, scale + times * (other.scale - scale)));
    }
}
