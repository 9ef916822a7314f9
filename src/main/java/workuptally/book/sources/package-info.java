/**
 * Where tables come from: a workbook, a folder of CSV files, one CSV file. Start with {@link workuptally.book.sources.OpenBook}.
 */
package workuptally.book.sources;
