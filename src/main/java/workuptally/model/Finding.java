package workuptally.model;

import java.util.Objects;

/**
 * What a reader must see.
 *
 * @param code stable word, for example {@code tare-missing}
 * @param severity how urgent
 * @param run run id, or empty where no run is concerned
 * @param place where it shows
 * @param seen what was read or computed
 * @param expected what is allowed or expected
 * @param source where the expectation comes from; empty where it is the form of the book itself
 * @param action what to do
 */
public record Finding(
        FindingCode code,
        Severity severity,
        String run,
        Place place,
        String seen,
        String expected,
        String source,
        String action) {
    /** Checks that no part is missing, and shares words that are equal. */
    public Finding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(run, "run");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(seen, "seen");
        // a finding met in many runs expects the same there, and often says the same
        seen = seen.intern();
        expected = expected.intern();
        source = source.intern();
        action = action.intern();
    }
}
