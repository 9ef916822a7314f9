/**
 * The figures the tool brings from outside: loaded from CSV files, each row with its source and basis, and replaceable by a laboratory.
 *
 * <p>Start with {@link workuptally.reference.Reference}, which has a room below it for each subject. The package knows its data and nothing
 * else: no book, no run, no equation beyond the interpolation inside a table.
 */
package workuptally.reference;
