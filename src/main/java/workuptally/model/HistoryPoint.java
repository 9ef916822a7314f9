package workuptally.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * An earlier result of a series.
 *
 * @param series series name
 * @param date when
 * @param yieldPercent yield, %
 * @param row its row
 */
public record HistoryPoint(String series, Optional<LocalDate> date, Field yieldPercent, RowPlace row) {}
