package workuptally.cli;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;

/**
 * The right to place files in a folder: one review at a time, so that the files of two never mix. The turn is a hidden folder, which a
 * file system makes for one of several programs only; placing takes moments, so one that is a minute old was left by a program that died.
 */
final class PlacingTurn {
    private static final String NAME = ".workup-tally-placing";
    private static final Duration LEFT_BEHIND = Duration.ofMinutes(1);
    private static final Duration PAUSE = Duration.ofMillis(20);
    private static final int MOST_PAUSES = 6000;

    private final Path folder;

    private PlacingTurn(Path folder) {
        this.folder = folder;
    }

    /** Waits for the turn. */
    static PlacingTurn take(Path target) throws IOException {
        Path folder = target.resolve(NAME);
        for (int i = 0; i < MOST_PAUSES; i++) {
            try {
                return new PlacingTurn(Files.createDirectory(folder));
            } catch (FileAlreadyExistsException taken) {
                removeIfLeftBehind(folder);
                pause();
            }
        }
        throw new IOException("another review is being placed there.");
    }

    private static void removeIfLeftBehind(Path folder) throws IOException {
        try {
            Instant made = Files.getLastModifiedTime(folder).toInstant();
            if (made.plus(LEFT_BEHIND).isBefore(Instant.now())) {
                Files.deleteIfExists(folder);
            }
        } catch (NoSuchFileException gone) {
            // The other review is done: the next try takes the turn.
            return;
        }
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
        Files.deleteIfExists(folder);
    }
}
