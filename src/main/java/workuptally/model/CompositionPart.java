package workuptally.model;

/**
 * One part of a stated composition, {@code ethyl acetate 81 %}.
 *
 * @param substance name as typed
 * @param massPercent share by mass, %, 0 to 100
 */
public record CompositionPart(String substance, double massPercent) {}
