package workuptally.model;

/**
 * An amount of a material, as planned or as charged.
 *
 * @param value the number in g, mL, mmol or equivalents, as the dimension says
 * @param dimension mass, volume, amount of substance or equivalents of the substrate
 * @param unitAsTyped unit as typed, for example {@code mg}
 */
public record Amount(Field value, Dimension dimension, String unitAsTyped) {}
