package workuptally.book.files;

/** A file or folder that cannot be read as a book at all; the message is one sentence with the remedy, fit for the reader of the book. */
public final class UnreadableBookException extends Exception {
    private static final long serialVersionUID = 1L;

    /**
     * A book that cannot be read.
     *
     * @param message what is wrong and what to do, one sentence
     */
    public UnreadableBookException(String message) {
        super(message);
    }

    public UnreadableBookException(String message, Throwable cause) {
        super(message, cause);
    }
}
