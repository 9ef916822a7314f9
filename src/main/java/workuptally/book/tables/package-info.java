/**
 * Rows become records: one class a table, {@link workuptally.book.tables.TableRow} reads a cell of any kind and says what is wrong with it. {@link workuptally.book.tables.RunIndex} gathers what belongs to a run.
 */
package workuptally.book.tables;
