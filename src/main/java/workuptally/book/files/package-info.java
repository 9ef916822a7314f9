/**
 * Files become raw cells with their places: the parts of a workbook, its number formats, the text of a CSV file. Start with {@link workuptally.book.files.WorkbookPackage} or {@link workuptally.book.files.CsvText}; both end in {@link workuptally.book.files.RawTable}. Knows no heading and no meaning.
 */
package workuptally.book.files;
