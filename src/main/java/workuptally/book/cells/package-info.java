/**
 * A cell becomes a number, a date or a list of parts, or a doubt with its reason. Start with {@link workuptally.book.cells.NumberText} for typed text and {@link workuptally.book.cells.CellNumber} for what a number cell shows. Knows no table.
 */
package workuptally.book.cells;
