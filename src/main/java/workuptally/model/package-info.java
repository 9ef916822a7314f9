/**
 * What a book says, as records: runs with their products, charges, steps, layers, assays and lots; containers, transfers, limits.
 *
 * <p>Start with {@link workuptally.model.Book} and {@link workuptally.model.Run}. Every entry keeps its {@link workuptally.model.Place}.
 * Numbers are in the unit their name ends with. The package knows no file format, no computation and no report.
 */
package workuptally.model;
