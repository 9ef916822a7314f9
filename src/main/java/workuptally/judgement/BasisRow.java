package workuptally.judgement;

/**
 * One value in force: a limit, a reference value or an equation.
 *
 * @param kind what it is
 * @param name what
 * @param value value as text
 * @param unit unit; empty if none
 * @param origin source, or {@code set in the book}, or {@code common practice}
 */
public record BasisRow(Kind kind, String name, String value, String unit, String origin) {
    /** What a row tells of, in the order in which rows of several books stand. */
    public enum Kind {
        ASSUMPTION,
        EQUATION,
        INPUT,
        LIMIT,
        REFERENCE;

        /** The word in reports. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
