package workuptally.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What the own row of a run says, before its parts.
 *
 * @param id run id as typed, trimmed
 * @param date day of the run, if readable
 * @param chemist who ran it
 * @param reaction title
 * @param kind reaction, separation or resolution
 * @param series name of the repeated preparation; empty if none
 * @param status planned, in workup, isolated or failed
 * @param conversionPercent conversion as typed, %
 * @param notes notes, with what they say that counts
 * @param row its row
 */
public record RunHead(
        String id,
        Optional<LocalDate> date,
        String chemist,
        String reaction,
        Run.Kind kind,
        String series,
        Run.Status status,
        Field conversionPercent,
        Notes notes,
        RowPlace row) {
    /** The same with another status. */
    public RunHead withStatus(Run.Status found) {
        return new RunHead(id, date, chemist, reaction, kind, series, found, conversionPercent, notes, row);
    }
}
