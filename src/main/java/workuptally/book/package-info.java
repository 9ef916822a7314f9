/**
 * Reads a book, a workbook or a folder of CSV files, into the records of {@link workuptally.model}, and writes empty books.
 *
 * <p>Start with {@link workuptally.book.BookReader}; {@link workuptally.book.Template} writes. Inside, one direction: files become raw
 * tables ({@code RawTable}), their headings are matched with the {@code Schema}, one class per table ({@code ChargeRows}, {@code
 * LayerRows} …) turns rows into records, {@code BookAssembly} ties them to runs. What cannot be understood becomes a finding and the rest
 * goes on; only a file that is no book at all is an {@link workuptally.book.UnreadableBookException}. A laboratory's own list is laid out
 * by a headings file ({@code OwnListLayout}) and feeds the same classes row by row ({@code OwnListSheet}); {@link
 * workuptally.book.HeadingsProposal} proposes that file. The package knows no computation and no report.
 */
package workuptally.book;
