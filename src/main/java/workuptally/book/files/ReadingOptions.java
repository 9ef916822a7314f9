package workuptally.book.files;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import workuptally.reference.Reference;

/**
 * How a book is read.
 *
 * @param headingsFile JSON file that maps a lab's own sheet names, headings and words to those of the book's form
 * @param sizeCaps sizes above which a file is refused
 * @param reference figures of the bench in force; asked for only where an entry needs one
 */
public record ReadingOptions(Optional<Path> headingsFile, SizeCaps sizeCaps, Supplier<Reference> reference) {
    /** Checks that no part is missing. */
    public ReadingOptions {
        Objects.requireNonNull(headingsFile, "headingsFile");
        Objects.requireNonNull(sizeCaps, "sizeCaps");
        Objects.requireNonNull(reference, "reference");
    }

    /** Headings as in the book's form, usual size caps, the tables packed with the program. */
    public static ReadingOptions defaults() {
        return new ReadingOptions(Optional.empty(), SizeCaps.defaults(), Reference::load);
    }

    /** The same with a headings file. */
    public ReadingOptions withHeadingsFile(Path file) {
        return new ReadingOptions(Optional.of(file), sizeCaps, reference);
    }

    /** The same with a laboratory's own reference data. */
    public ReadingOptions withReference(Reference own) {
        return new ReadingOptions(headingsFile, sizeCaps, () -> own);
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
