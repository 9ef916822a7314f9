package workuptally.book.words;

import java.math.BigDecimal;

/**
 * Values that a column can take.
 *
 * @param least least value, in the unit of the column
 * @param most largest value
 * @param words the range in words, to follow the quantity; empty where anything is possible
 */
public record Range(double least, double most, String words) {
    public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, "");
    public static final Range NOT_NEGATIVE = new Range(0, Double.POSITIVE_INFINITY, "of 0 or more");
    public static final Range POSITIVE = new Range(Double.MIN_VALUE, Double.POSITIVE_INFINITY, "above 0");
    public static final Range PERCENT = new Range(0, 100, "from 0 to 100");

    /** An assay: a measured one can come out a little over 100 %, more than 102 % is no assay, and neither is 0 (common practice). */
    public static final Range ASSAY = new Range(Double.MIN_VALUE, 102, "above 0 and up to 100");

    /** Water at concentrated strong acid and base; beyond lies a slip of the pen (common practice). */
    public static final Range PH = new Range(-2, 16, "from -2 to 16");

    /** Liquids of a synthesis laboratory, from light hydrocarbons to heavy halogenated liquids with room to spare (common practice). */
    public static final Range DENSITY = new Range(0.4, 5, "from 0.4 to 5");

    /** Neat hydrofluoric acid and its like are near 28 mol/L; more is a slip of the unit (common practice). */
    public static final Range MOLARITY = new Range(Double.MIN_VALUE, 30, "above 0 and up to 30");

    /** From liquid nitrogen, -196 °C, up to the hottest bath of a laboratory (common practice). */
    public static final Range TEMPERATURE = new Range(-200, 1000, "from -200 to 1000");

    /** A room in which people work, with a cold room (common practice). */
    public static final Range ROOM_TEMPERATURE = new Range(-40, 60, "from -40 to 60");

    /** From above the highest town, near 50 kPa, to beyond the highest pressure of the weather (common practice). */
    public static final Range ROOM_PRESSURE = new Range(40, 120, "from 40 to 120");

    /** From the smallest vial in which layers are parted to the vessels of a kilo laboratory, mL (common practice). */
    public static final Range FUNNEL = new Range(2, 200_000, "from 2 to 200000");

    /** From one value to another, both allowed. */
    public static Range of(double least, double most) {
        return new Range(least, most, "from " + plain(least) + " to " + plain(most));
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    public boolean holds(double value) {
        return value >= least && value <= most;
    }
}
