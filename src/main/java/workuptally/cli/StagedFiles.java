package workuptally.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Files that appear together or not at all. They are written into a hidden folder within their target, on the same file system, and then
 * moved into place one after the other; when a move fails, the files moved so far are taken back and those they replaced return. Each move
 * replaces a file at once, so that a program that is stopped anywhere leaves whole files only.
 */
final class StagedFiles implements AutoCloseable {
    private final Path target;
    private final StagingFolder folder;
    private final Path staging;
    private final Path replaced;
    private final List<String> names = new ArrayList<>();

    /**
     * Prepares a target folder, which is made if it is not there.
     *
     * @throws UnwritableOutputException if nothing can be written there
     */
    StagedFiles(Path target) throws UnwritableOutputException {
        this.target = target;
        try {
            Files.createDirectories(target);
            folder = StagingFolder.in(target);
            staging = folder.path();
            replaced = staging.resolve("replaced");
        } catch (IOException e) {
            throw new UnwritableOutputException("Nothing can be written to " + target + ": " + reason(e), e);
        }
    }

    /** Where the file of that name is to be written; it is placed with the others. */
    Path add(String name) {
        names.add(name);
        return staging.resolve(name);
    }

    /** A file that is needed on the way and not placed. */
    Path scratch(String name) {
        return staging.resolve("scratch-" + name);
    }

    /**
     * Moves all files into place.
     *
     * @return the placed files in order
     * @throws UnwritableOutputException if one cannot be placed; then the folder is as it was before
     */
    List<Path> place() throws UnwritableOutputException {
        List<String> placed = new ArrayList<>();
        try {
            PlacingTurn turn = PlacingTurn.take(target);
            try {
                placeAll(placed);
            } finally {
                turn.end();
            }
        } catch (IOException e) {
            throw new UnwritableOutputException(
                    "The files could not be placed in " + target + ": " + reason(e)
                            + " Close them in other programs and run again; the folder is as it was.",
                    e);
        }
        return names.stream().map(target::resolve).toList();
    }

    private void placeAll(List<String> placed) throws IOException {
        Files.createDirectory(replaced);
        try {
            for (String name : names) {
                keepOld(name);
                Files.move(staging.resolve(name), target.resolve(name), StandardCopyOption.ATOMIC_MOVE);
                placed.add(name);
            }
        } catch (IOException e) {
            takeBack(placed);
            throw e;
        }
    }

    private void keepOld(String name) throws IOException {
        Path old = target.resolve(name);
        if (Files.isDirectory(old)) {
            throw new IOException(old + " is a folder.");
        }
        if (Files.exists(old, LinkOption.NOFOLLOW_LINKS)) {
            try {
                Files.createLink(replaced.resolve(name), old);
            } catch (UnsupportedOperationException | IOException noLinks) {
                Files.copy(old, replaced.resolve(name), LinkOption.NOFOLLOW_LINKS);
            }
        }
    }

    private void takeBack(List<String> placed) {
        for (String name : names) {
            try {
                if (!placed.contains(name)) {
                    continue;
                }
                if (!Files.exists(replaced.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                    Files.deleteIfExists(target.resolve(name));
                } else {
                    Files.move(replaced.resolve(name), target.resolve(name), StandardCopyOption.ATOMIC_MOVE);
                }
            } catch (IOException stuck) {
                // The others can still be taken back; the failure of the placing itself is what is reported.
                continue;
            }
        }
    }

    /** Removes what is left of the hidden folder. */
    @Override
    public void close() throws IOException {
        folder.close();
    }

    private static String reason(IOException failure) {
        String sentence = Failure.sentence(failure);
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }
}
