package workuptally.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import workuptally.book.files.FileBytes;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.lists.HeadingsFile;
import workuptally.book.lists.OwnListLayout;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.sources.OpenBook;
import workuptally.model.Book;
import workuptally.model.InputFile;

/**
 * Reads a book: a workbook (.xlsx or .xlsm), or a folder of CSV files with the same tables.
 *
 * <p>The input is opened for reading only. Macros are never run, formulas are taken by their stored result. A cell, row or table that
 * cannot be understood becomes a finding of the book; everything else is read.
 */
public final class BookReader {
    private final ReadingOptions options;

    /** A reader with the usual options. */
    public BookReader() {
        this(ReadingOptions.defaults());
    }

    /** A reader with options. */
    public BookReader(ReadingOptions options) {
        this.options = options;
    }

    /**
     * Reads a book.
     *
     * @param book workbook file, or folder of CSV files
     * @throws UnreadableBookException if it is no book or is damaged; the message names the remedy
     * @throws IOException if it cannot be accessed
     */
    public Book read(Path book) throws UnreadableBookException, IOException {
        Optional<HeadingsFile> headings = Optional.empty();
        if (options.headingsFile().isPresent()) {
            headings = Optional.of(HeadingsFile.read(options.headingsFile().get()));
        }
        HeadingAliases aliases = headings.map(HeadingsFile::aliases).orElse(HeadingAliases.NONE);
        List<OwnListLayout> lists = headings.map(HeadingsFile::lists).orElse(List.of());
        Book read;
        try (OpenBook source = OpenBook.of(book, aliases, !lists.isEmpty(), options.sizeCaps())) {
            read = new BookAssembly(source.tables(), aliases, lists, options.reference())
                    .read(headings.map(HeadingsFile::file));
        }
        requireUnchanged(book, read);
        return read;
    }

    /**
     * True where the headings file says how lists of the laboratory's own are read; then a CSV file alone can be a book.
     *
     * @throws UnreadableBookException if it is no headings file
     * @throws IOException if it cannot be accessed
     */
    public boolean readsLists() throws UnreadableBookException, IOException {
        return options.headingsFile().isPresent()
                && !HeadingsFile.read(options.headingsFile().get()).lists().isEmpty();
    }

    /**
     * Checks that the files of a book still hold what was read.
     *
     * @param book workbook file, or folder of CSV files
     * @param read what was read from it
     * @throws UnreadableBookException if one has changed since
     * @throws IOException if one cannot be accessed
     */
    public void requireUnchanged(Path book, Book read) throws UnreadableBookException, IOException {
        for (InputFile file : read.files()) {
            Path path = Files.isDirectory(book) ? book.resolve(file.name()) : book;
            Optional<Path> headings = options.headingsFile()
                    .filter(own -> own.getFileName().toString().equals(file.name()));
            boolean same = headings.isPresent() && isUnchanged(headings.get(), file)
                    || Files.exists(path) && isUnchanged(path, file);
            if (!same) {
                throw new UnreadableBookException(
                        file.name() + " was changed while it was read: close it in other programs and run again.");
            }
        }
    }

    private static boolean isUnchanged(Path path, InputFile read) throws UnreadableBookException, IOException {
        return FileBytes.hash(path).sha256().equals(read.sha256());
    }
}
