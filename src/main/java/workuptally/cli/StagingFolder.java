package workuptally.cli;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Stream;
import workuptally.report.json.Manifest;

/**
 * A hidden folder in which files are written before they are placed. Its lock is held as long as the program lives: a folder whose lock is
 * free was left behind by a program that died; the next run places the rest of a set that was being placed, and clears the folder away.
 */
final class StagingFolder implements AutoCloseable {
    private static final String PREFIX = ".workup-tally-";
    private static final String LOCK = "lock";
    private static final Duration LOCKED_BY_THEN = Duration.ofMinutes(1);

    /**
     * Names the folders of this process, which leaves them alone: some systems let go of a lock when the process that holds it closes the
     * file a second time.
     */
    private static final String PROCESS = UUID.randomUUID().toString().substring(0, 8);

    private static final int MOST_TRIES = 5;

    private final Path folder;
    private final LockFile lock;
    private final Thread atTheEnd = new Thread(this::clearAtTheEnd, "clear");
    private final ReentrantLock whole = new ReentrantLock();

    private StagingFolder(Path folder, LockFile lock) {
        this.folder = folder;
        this.lock = lock;
        Runtime.getRuntime().addShutdownHook(atTheEnd);
    }

    /**
     * Makes a folder, and clears away those that dead programs left there.
     *
     * @throws IOException if none can be made; then nothing is left of it
     */
    static StagingFolder in(Path target) throws IOException {
        clearLeftBehind(target);
        while (true) {
            Path folder = Files.createTempDirectory(target, PREFIX + PROCESS + "-");
            try {
                Optional<LockFile> lock = LockFile.take(folder.resolve(LOCK));
                if (lock.isPresent()) {
                    return new StagingFolder(folder, lock.get());
                }
            } catch (IOException e) {
                delete(folder);
                throw e;
            }
        }
    }

    Path path() {
        return folder;
    }

    /** What must not be half done when the program is asked to stop: a stop waits for it. */
    <T> T whole(Work<T> work) throws IOException {
        whole.lock();
        try {
            return work.done();
        } finally {
            whole.unlock();
        }
    }

    /** Work on files. */
    interface Work<T> {
        T done() throws IOException;
    }

    /** Removes the folder with all that is left in it. */
    @Override
    public void close() throws IOException {
        lock.close();
        delete(folder);
        try {
            Runtime.getRuntime().removeShutdownHook(atTheEnd);
        } catch (IllegalStateException stopping) {
            // The program is being stopped, and the folder is gone already.
            return;
        }
    }

    /** When the program is interrupted: writers may still be at work for a moment. */
    private void clearAtTheEnd() {
        whole.lock();
        for (int i = 0; i < MOST_TRIES; i++) {
            try {
                lock.close();
                delete(folder);
                return;
            } catch (IOException stuck) {
                // What stays is cleared away by the next run.
                continue;
            }
        }
    }

    private static void clearLeftBehind(Path target) {
        try (DirectoryStream<Path> folders = Files.newDirectoryStream(target, PREFIX + "*-*")) {
            for (Path folder : folders) {
                boolean own = folder.getFileName().toString().startsWith(PREFIX + PROCESS);
                if (!own && Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS) && isLeftBehind(folder)) {
                    placeTheRest(target, folder);
                    delete(folder);
                }
            }
        } catch (IOException | DirectoryIteratorException stuck) {
            // What cannot be cleared away does no harm: this run has a folder of its own.
            return;
        }
    }

    /** A whole staged manifest says that its set had been written, and was being placed; half a one says nothing. */
    private static void placeTheRest(Path target, Path folder) throws IOException {
        List<Path> manifests;
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*" + Placement.ENDING)) {
            manifests = new ArrayList<>();
            for (Path manifest : found) {
                if (Manifest.read(manifest).isPresent()) {
                    manifests.add(manifest);
                }
            }
        }
        if (manifests.isEmpty()) {
            return;
        }
        PlacingTurn turn = PlacingTurn.take(target);
        try {
            for (Path manifest : manifests) {
                new Placement(target, folder, manifest.getFileName().toString()).place();
            }
        } finally {
            turn.end();
        }
    }

    private static boolean isLeftBehind(Path folder) throws IOException {
        Path file = folder.resolve(LOCK);
        if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
            Instant made = Files.getLastModifiedTime(folder).toInstant();
            return made.plus(LOCKED_BY_THEN).isBefore(Instant.now());
        }
        Optional<LockFile> lock = LockFile.take(file);
        if (lock.isEmpty()) {
            return false;
        }
        try (LockFile held = lock.get()) {
            return held.isLocked();
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.notExists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        List<Path> left;
        try (Stream<Path> all = Files.walk(folder)) {
            left = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : left) {
            Files.deleteIfExists(path);
        }
    }
}
