package workuptally.model;

import java.util.Objects;

/**
 * What a reader must see.
 *
 * @param code what it is about
 * @param severity how urgent
 * @param subject what of the book it is about
 * @param place where it shows
 * @param seen what was read or computed
 * @param expected what is allowed or expected
 * @param source where the expectation comes from; empty where it is the form of the book itself
 * @param action what to do
 */
public record Finding(
        FindingCode code,
        Severity severity,
        Subject subject,
        Place place,
        Phrase seen,
        Phrase expected,
        String source,
        Phrase action) {
    /** Checks that no part is missing, and shares sources that are equal. */
    public Finding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(seen, "seen");
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(action, "action");
        source = source.intern();
    }

    /** Run id, or empty where no run is concerned. */
    public String run() {
        return subject.run();
    }

    /** The same about something that is known by name. */
    public Finding about(Subject named) {
        return new Finding(code, severity, named, place, seen, expected, source, action);
    }
}
