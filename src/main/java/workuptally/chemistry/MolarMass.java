package workuptally.chemistry;

/**
 * Molar mass with its standard uncertainty.
 *
 * @param gramsPerMole g/mol, above 0
 * @param standardUncertaintyGramsPerMole g/mol, 0 or more: half-widths of the atomic weights as rectangular distributions, elements
 *     independent of each other
 */
public record MolarMass(double gramsPerMole, double standardUncertaintyGramsPerMole) {}
