package workuptally.book.sources;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.schema.HeadingAliases;

/**
 * A book opened for reading, whatever its form.
 *
 * @param tables its tables
 * @param resource what is closed behind them
 */
public record OpenBook(TableSource tables, Closeable resource) implements Closeable {
    /**
     * Opens a workbook, a folder of CSV files or, where lists are expected, a single CSV file.
     *
     * @param lists whether a headings file says how to read a list
     * @throws UnreadableBookException if it is none of these, or is damaged
     * @throws IOException if it cannot be accessed
     */
    public static OpenBook of(Path book, HeadingAliases aliases, boolean lists, ReadingOptions.SizeCaps caps)
            throws UnreadableBookException, IOException {
        if (!Files.exists(book)) {
            throw new NoSuchFileException(book.toString());
        }
        if (Files.isDirectory(book)) {
            return new OpenBook(new CsvFolder(book, aliases, caps), () -> {});
        }
        if (lists && CsvFile.isOne(book)) {
            return new OpenBook(new CsvFile(book, caps), () -> {});
        }
        WorkbookFile workbook = WorkbookFile.open(book, aliases, caps);
        return new OpenBook(workbook, workbook);
    }

    @Override
    public void close() throws IOException {
        resource.close();
    }
}
