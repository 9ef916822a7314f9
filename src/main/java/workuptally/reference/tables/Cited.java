package workuptally.reference.tables;

import java.util.List;

/** A row of reference data that says where it comes from. */
public interface Cited {
    /** The table the row stands in, for example {@code solvents}. */
    String table();

    /** The key of the row within its table. */
    String key();

    /** Keys of {@link Source} rows, at least one. */
    List<String> sources();

    /** How firmly the row is known: the weakest of its parts. */
    Basis basis();
}
