package workuptally.model;

import java.util.Set;

/**
 * The notes of a row: free text, and what the reading understood of it.
 *
 * @param text as typed
 * @param says what they say that counts
 */
public record Notes(String text, Set<Said> says) {
    /** Of a row without notes. */
    public static final Notes NONE = new Notes("", Set.of());

    /** Copies the set. */
    public Notes {
        says = Set.copyOf(says);
    }

    /** True where they say it. */
    public boolean say(Said said) {
        return says.contains(said);
    }

    /** What notes can say. */
    public enum Said {
        /** A result is a share of chromatographic area. */
        AREA_PERCENT,
        /** A content in per cent, of a recovered solvent for example. */
        PERCENT,
        /** What was measured had been diluted. */
        DILUTED,
        /** A measurement that failed, or is not of the sample as it stands in its vessel. */
        DOUBTED,
        /** Some of it was spilled, lost or poured away. */
        SPILLED,
        /** It was weighed wet. */
        NOT_DRY
    }
}
