package workuptally.reference.tables;

import java.util.Locale;
import java.util.Optional;

/** How a figure is known, from the firmest to the weakest. */
public enum Basis {
    /** Taken from the document named. */
    SOURCE,
    /** Set by the laboratory itself. */
    LOCAL,
    /** A fact of the trade without a document behind it. */
    COMMON_PRACTICE,
    /** Remembered; to be checked before it is relied on. */
    MEMORY;

    /** The word as the files write it, for example {@code common practice}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The weaker of this basis and another. */
    public Basis weaker(Basis other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** The basis that the files call by a word. */
    public static Optional<Basis> of(String word) {
        for (Basis basis : values()) {
            if (basis.word().equals(word)) {
                return Optional.of(basis);
            }
        }
        return Optional.empty();
    }
}
