package workuptally.examples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.Review;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Book;
import workuptally.reference.Reference;

/** The invented demo week, read and computed by the program itself, once for all tests that run in one process. */
public final class DemoReview {
    private static final Book BOOK = read();
    private static final Review REVIEW = new ReviewBuilder(Reference.load(), "0.1.0").review(BOOK);

    private DemoReview() {}

    /** The book. */
    public static Book book() {
        return BOOK;
    }

    /** Its review. */
    public static Review review() {
        return REVIEW;
    }

    private static Book read() {
        try {
            return new BookReader().read(Path.of("input-templates", "demo-week"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UnreadableBookException e) {
            throw new IllegalStateException(e);
        }
    }
}
