package workuptally.model;

/**
 * A correction of the record; both values stay visible.
 *
 * @param when time as typed
 * @param who who corrected
 * @param record what was corrected
 * @param oldValue value before, as typed
 * @param newValue value after, as typed
 * @param reason why
 * @param row its row
 */
public record Correction(
        String when, String who, String record, String oldValue, String newValue, String reason, RowPlace row) {}
