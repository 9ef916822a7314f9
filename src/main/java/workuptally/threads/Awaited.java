package workuptally.threads;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;

/** The result of work on another thread, or what stopped it, thrown as it was. */
public final class Awaited {
    private Awaited() {}

    /**
     * Waits for a piece of work.
     *
     * @param <T> its result
     * @param <X> what it may throw beside an I/O error
     * @param declared the class of {@code X}
     * @throws X if the work threw it
     * @throws IOException if the work threw it, or the wait was interrupted
     */
    public static <T, X extends Exception> T result(Future<T> work, Class<X> declared) throws X, IOException {
        try {
            return work.get();
        } catch (ExecutionException failed) {
            Throwable cause = failed.getCause();
            if (declared.isInstance(cause)) {
                throw declared.cast(cause);
            }
            if (cause instanceof IOException io) {
                throw io;
            }
            if (cause instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) cause; // nothing else is declared
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw (IOException) new InterruptedIOException("The work was interrupted.").initCause(interrupted);
        }
    }

    /**
     * Waits for a piece of work that throws nothing but I/O errors.
     *
     * @param <T> its result
     * @throws IOException if the work threw it, or the wait was interrupted
     */
    public static <T> T result(Future<T> work) throws IOException {
        return result(work, IOException.class);
    }
}
