/**
 * Reads a book, a workbook or a folder of CSV files, into the records of {@link workuptally.model}, and writes empty books.
 *
 * <p>Start with {@link workuptally.book.BookReader}; {@link workuptally.book.template.Template} writes. The rooms run one way: {@code
 * words} and {@code files} know nothing of a book; {@code schema} says what it may hold; {@code cells} reads a number or a date; {@code
 * sources} opens tables; {@code headings} matches their columns; {@code tables} turns rows into records, one class a table; {@code lists}
 * feeds a laboratory's own list to the same classes; the root ties all to runs. What cannot be understood becomes a finding and the rest
 * goes on; only a file that is no book at all is an {@link workuptally.book.files.UnreadableBookException}. The package knows no
 * computation and no report.
 */
package workuptally.book;
