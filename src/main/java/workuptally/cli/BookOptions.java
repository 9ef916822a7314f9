package workuptally.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import workuptally.book.BookReader;
import workuptally.book.EarlierReviews;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Book;
import workuptally.model.Limit;
import workuptally.reference.Reference;

/** What a book is read and reviewed with; shared by every command that reviews. */
final class BookOptions {
    @Option(
            names = "--reference",
            paramLabel = "DIR",
            description =
                    "Folder with the laboratory's own reference rows; they replace or add to those of the program.")
    private Optional<Path> referenceFolder = Optional.empty();

    @Option(
            names = "--headings",
            paramLabel = "FILE",
            description = "JSON file that maps your own sheet names, headings and words to those of the book.")
    private Optional<Path> headingsFile = Optional.empty();

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            description = "Day for which ages are computed, as 2026-03-06; replaces 'As of' of the Limits table.")
    private Optional<LocalDate> asOf = Optional.empty();

    @Option(
            names = "--experience",
            paramLabel = "DIR",
            description =
                    "Folder with the JSON of earlier reviews: what layers of a series held there is shown beside unassayed ones.")
    private Optional<Path> experienceFolder = Optional.empty();

    private Optional<Reference> reference = Optional.empty();

    /** How books are read; a laboratory's own reference data are read, and refused, here. */
    ReadingOptions reading() throws IOException {
        ReadingOptions options = referenceFolder.isPresent()
                ? ReadingOptions.defaults().withReference(reference())
                : ReadingOptions.defaults();
        return headingsFile.map(options::withHeadingsFile).orElse(options);
    }

    /** Files beside the book that are only read. */
    void addInputs(TakenFiles taken) throws IOException {
        if (headingsFile.isPresent()) {
            taken.addInput(headingsFile.get());
        }
        if (referenceFolder.isPresent()) {
            taken.addInput(referenceFolder.get());
        }
    }

    /** The tables in force; those of a laboratory are read once. */
    synchronized Reference reference() throws IOException {
        if (reference.isEmpty()) {
            reference =
                    Optional.of(referenceFolder.isPresent() ? Reference.load(referenceFolder.get()) : Reference.load());
        }
        return reference.get();
    }

    /** Reads a book. */
    Book read(Path path) throws UnreadableBookException, IOException {
        Book book = beside(new BookReader(reading()).read(path));
        return asOf.map(day -> book.withLimits(book.limits().given(Limit.AS_OF, day.toString())))
                .orElse(book);
    }

    private Book beside(Book book) throws IOException {
        if (experienceFolder.isEmpty()) {
            return book;
        }
        EarlierReviews earlier = EarlierReviews.in(experienceFolder.get());
        return book.withEarlier(earlier.contents(), earlier.findings());
    }

    /**
     * Reviews books with the reference data read once; may be used by several threads. A laboratory's own tables are read, and refused, here;
     * those of the program alone are waited for only where the reviewer is asked for, so that a book can be read meanwhile.
     */
    Supplier<ReviewBuilder> reviewer() throws IOException {
        String version = Version.number();
        if (referenceFolder.isEmpty()) {
            return () -> new ReviewBuilder(Reference.load(), version);
        }
        ReviewBuilder reviewer = new ReviewBuilder(reference(), version);
        return () -> reviewer;
    }
}
