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

    /** True where nothing in them was understood that counts, and there is something to read. */
    public boolean unread() {
        return !text.isBlank() && says.stream().allMatch(said -> said == Said.PERCENT);
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
        /** It is no single liquid: crystals, a second phase, an emulsion, of which a sample shows a part. */
        NOT_UNIFORM,
        /** Some of it was spilled or lost, or only a part is here. */
        SPILLED,
        /** Some of it was thrown away. */
        DISCARDED,
        /** Labels, vessels or layers may have been taken for each other. */
        MIXED_UP,
        /** Something else was weighed with it. */
        NOT_ALONE,
        /** How it came about, its colour, words that change nothing. */
        NOTHING,
        /** It was weighed wet. */
        NOT_DRY
    }
}
