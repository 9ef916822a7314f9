package workuptally.reference.tables;

/**
 * Entry of the bibliography.
 *
 * @param key key that rows name
 * @param citation where the figures stand
 * @param kind standard, handbook, database, journal, regulation, supplier, open text, computation, common practice or local
 */
public record Source(String key, String citation, String kind) {
    static Source of(ReferenceCells row) throws IllegalReferenceException {
        return new Source(row.text("key"), row.text("citation"), row.text("kind"));
    }
}
