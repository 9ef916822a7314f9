package workuptally.model;

import java.util.Set;

/**
 * A correction of the record; both values stay visible.
 *
 * @param when time as typed
 * @param who who corrected
 * @param record what was corrected
 * @param oldValue value before, as typed
 * @param newValue value after, as typed
 * @param reason why
 * @param settles findings that the row says to be settled, by the codes under Record; empty for a correction of an entry
 * @param row its row
 */
public record Correction(
        String when,
        String who,
        String record,
        String oldValue,
        String newValue,
        String reason,
        Set<FindingCode> settles,
        RowPlace row) {
    /** Copies the set. */
    public Correction {
        settles = Set.copyOf(settles);
    }
}
