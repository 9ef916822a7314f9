package workuptally.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * An earlier result of a series.
 *
 * @param series series name
 * @param date when
 * @param yieldPercent yield, %
 * @param layer label of a layer of that batch; empty for a yield alone
 * @param contentPercent what that layer held, % of theory
 * @param row its row
 */
public record HistoryPoint(
        String series,
        Optional<LocalDate> date,
        Field yieldPercent,
        String layer,
        Field contentPercent,
        RowPlace row) {}
