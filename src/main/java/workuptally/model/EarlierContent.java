package workuptally.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a layer of an earlier batch was found to hold.
 *
 * @param series series of the batch
 * @param layer label of the layer
 * @param substance substance; empty for the one wanted product
 * @param run run of the batch; empty if not told
 * @param date its day, if told
 * @param percentOfTheory content, or the limit it lies below, % of theory
 * @param below true for a limit
 */
public record EarlierContent(
        String series,
        String layer,
        String substance,
        String run,
        Optional<LocalDate> date,
        double percentOfTheory,
        boolean below) {}
