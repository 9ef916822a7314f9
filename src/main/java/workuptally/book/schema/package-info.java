/**
 * What a book may hold: tables, columns, units, ranges, help. Start with {@link workuptally.book.schema.Schema}.
 */
package workuptally.book.schema;
