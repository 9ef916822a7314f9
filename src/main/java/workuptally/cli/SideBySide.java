package workuptally.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import workuptally.book.files.UnreadableBookException;
import workuptally.threads.Awaited;

/** Pieces of work that do not touch each other, done at the same time on as many threads as there are processors. */
final class SideBySide {
    private final List<Callable<Void>> pieces = new ArrayList<>();

    /** A piece of work. */
    interface Piece {
        void run() throws UnreadableBookException, IOException;
    }

    void add(Piece piece) {
        pieces.add(() -> {
            piece.run();
            return null;
        });
    }

    /**
     * Does all pieces; ends when all have ended.
     *
     * @throws UnreadableBookException or any other that a piece threw: that of the first piece, in the order added, which failed
     */
    void run() throws UnreadableBookException, IOException {
        int threads = Math.min(pieces.size(), Runtime.getRuntime().availableProcessors());
        ExecutorService workers = Executors.newFixedThreadPool(Math.max(1, threads));
        try {
            for (Future<Void> piece : workers.invokeAll(pieces)) {
                Awaited.result(piece, UnreadableBookException.class);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException("The work was interrupted.", interrupted);
        } finally {
            workers.shutdownNow();
        }
    }
}
