package workuptally.book.files;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * How a book is read.
 *
 * @param headingsFile JSON file that maps a lab's own sheet names, headings and words to those of the book's form
 * @param sizeCaps sizes above which a file is refused
 */
public record ReadingOptions(Optional<Path> headingsFile, SizeCaps sizeCaps) {
    /** Checks that no part is missing. */
    public ReadingOptions {
        Objects.requireNonNull(headingsFile, "headingsFile");
        Objects.requireNonNull(sizeCaps, "sizeCaps");
    }

    /** Headings as in the book's form, usual size caps. */
    public static ReadingOptions defaults() {
        return new ReadingOptions(Optional.empty(), SizeCaps.defaults());
    }

    /** The same with a headings file. */
    public ReadingOptions withHeadingsFile(Path file) {
        return new ReadingOptions(Optional.of(file), sizeCaps);
    }

    /**
     * Absolute sizes above which a file is refused, so that a damaged or hostile file cannot fill the memory.
     *
     * @param fileBytes largest input file, bytes
     * @param entryBytes largest part of a workbook once inflated, bytes
     * @param totalBytes all parts of a workbook together once inflated, bytes
     * @param entries most parts in a workbook
     */
    public record SizeCaps(long fileBytes, long entryBytes, long totalBytes, int entries) {
        /** Caps well above a book of ten thousand runs. */
        public static SizeCaps defaults() {
            return new SizeCaps(200_000_000L, 400_000_000L, 1_000_000_000L, 10_000);
        }
    }
}
