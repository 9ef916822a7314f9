package workuptally.report.json;

/** A number as the shortest decimal that keeps what the figure is worth: what lies behind it no measurement has. */
final class ShortNumber {
    /** Digits of what a person entered. */
    private static final int TYPED = 12;

    /** Digits of a result: one or two more than the best weighing of a bench has. */
    private static final int COMPUTED = 7;

    /** Digits of an uncertainty and of a share of one, which is stated to two (JCGM 100:2008, 7.2.6). */
    private static final int ROUGH = 4;

    /** Digits that a value keeps however uncertain it is. */
    private static final int LEAST = 5;

    /** Powers of ten are exact up to this one. */
    private static final int MOST_PLACES = 22;

    private ShortNumber() {}

    static double typed(double value) {
        return digits(value, TYPED);
    }

    static double computed(double value) {
        return digits(value, COMPUTED);
    }

    static double rough(double value) {
        return digits(value, ROUGH);
    }

    /** The value to a thousandth of its uncertainty, any multiple of u. */
    static double worth(double value, double uncertainty) {
        if (value == 0 || !(uncertainty > 0) || !Double.isFinite(uncertainty)) {
            return computed(value);
        }
        int needed = ROUGH + magnitude(value) - magnitude(uncertainty);
        return digits(value, Math.max(LEAST, Math.min(COMPUTED, needed)));
    }

    private static int magnitude(double value) {
        return (int) Math.floor(Math.log10(Math.abs(value)));
    }

    private static double digits(double value, int digits) {
        if (value == 0) {
            return value;
        }
        int places = digits - 1 - magnitude(value);
        if (places < 0 || places > MOST_PLACES) {
            return value;
        }
        double scale = Math.pow(10, places);
        return Math.rint(value * scale) / scale;
    }
}
