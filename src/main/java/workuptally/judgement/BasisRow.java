package workuptally.judgement;

/**
 * One value in force: a limit, a reference value or an equation.
 *
 * @param kind {@code limit}, {@code assumption}, {@code reference}, {@code equation} or {@code input}
 * @param name what
 * @param value value as text
 * @param unit unit; empty if none
 * @param origin source, or {@code set in the book}, or {@code common practice}
 */
public record BasisRow(String kind, String name, String value, String unit, String origin) {}
