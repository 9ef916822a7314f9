package workuptally.cli;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;

/** The right to place files in a folder: one review at a time, so that the files of two never mix. */
final class PlacingTurn {
    private static final String NAME = ".workup-tally-placing";
    private static final Duration PAUSE = Duration.ofMillis(20);
    private static final int MOST_PAUSES = 3000;

    private final LockFile lock;

    private PlacingTurn(LockFile lock) {
        this.lock = lock;
    }

    /** Waits for the turn. */
    static PlacingTurn take(Path target) throws IOException {
        for (int i = 0; i < MOST_PAUSES; i++) {
            Optional<LockFile> lock = LockFile.take(target.resolve(NAME));
            if (lock.isPresent()) {
                return new PlacingTurn(lock.get());
            }
            pause();
        }
        throw new IOException("another review is being placed there.");
    }

    private static void pause() throws IOException {
        try {
            Thread.sleep(PAUSE.toMillis());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("stopped while another review was being placed.");
        }
    }

    /** Lets the next one place. */
    void end() throws IOException {
        lock.close();
    }
}
