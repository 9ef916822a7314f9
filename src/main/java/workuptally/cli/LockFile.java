package workuptally.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** A file whose lock this program holds. The system lets go of it when the program dies, however that happens. */
final class LockFile implements AutoCloseable {
    private final Path file;
    private final FileChannel channel;
    private final boolean locked;

    private LockFile(Path file, FileChannel channel, boolean locked) {
        this.file = file;
        this.channel = channel;
        this.locked = locked;
    }

    /**
     * Takes the lock, and makes the file if it is not there.
     *
     * @return empty where a live program holds it, or let go of it this moment
     * @throws IOException if the file cannot be made
     */
    static Optional<LockFile> take(Path file) throws IOException {
        FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        try {
            // The holder deletes the file before it lets go: what was locked after that is a lock of nothing.
            if (channel.tryLock() != null && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                return Optional.of(new LockFile(file, channel, true));
            }
        } catch (OverlappingFileLockException ownProcess) {
            channel.close();
            return Optional.empty();
        } catch (IOException noLocks) {
            return Optional.of(new LockFile(file, channel, false));
        }
        channel.close();
        return Optional.empty();
    }

    /** False on a file system without locks, where nobody knows whether another program is at work. */
    boolean isLocked() {
        return locked;
    }

    /** Removes the file and lets go of its lock. */
    @Override
    public void close() throws IOException {
        try (channel) {
            Files.deleteIfExists(file);
        }
    }
}
