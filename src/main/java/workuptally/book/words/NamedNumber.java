package workuptally.book.words;

/**
 * A name with a number, as in {@code ethyl acetate 81 %}.
 *
 * @param name name
 * @param value number in the unit asked for
 * @param bare true where it was typed without a unit
 */
public record NamedNumber(String name, double value, boolean bare) {}
