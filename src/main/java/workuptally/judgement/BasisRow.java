package workuptally.judgement;

import java.util.Optional;
import workuptally.model.Limit;

/**
 * One value in force: a limit, a reference value or an equation.
 *
 * @param kind what it is
 * @param limit the limit that it tells of, if it is one
 * @param name what
 * @param value value as text
 * @param unit unit; empty if none
 * @param origin source, or {@code set in the book}, or {@code common practice}
 */
public record BasisRow(Kind kind, Optional<Limit> limit, String name, String value, String unit, String origin) {
    /** A row about anything but a limit. */
    public BasisRow(Kind kind, String name, String value, String unit, String origin) {
        this(kind, Optional.empty(), name, value, unit, origin);
    }

    /** The row of a limit in force. */
    public static BasisRow of(Limit limit, String value, String origin) {
        return new BasisRow(Kind.LIMIT, Optional.of(limit), limit.title(), value, limit.unit(), origin);
    }

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
