/**
 * Chemistry of a workup as pure functions: formulas and molar masses, partition, acids and bases, gas, vapour pressure, densities, drying,
 * assays and the statistics of repeated runs.
 *
 * <p>Start with {@link workuptally.chemistry.Formula} and {@link workuptally.chemistry.Distribution}. The package knows no book, no run, no
 * table of data: values are passed in. Every function states its equation, units, validity and source.
 */
package workuptally.chemistry;
