package workuptally.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Files that no output of a call may replace: what it reads, and what it has written for another book. Real files count, whatever links
 * lead to them.
 */
final class TakenFiles {
    private final Set<Path> real = new LinkedHashSet<>();

    /** A file, or a folder with the files in it, that the call reads. */
    void addInput(Path path) throws IOException {
        real.add(real(path));
        if (Files.isDirectory(path)) {
            try (Stream<Path> files = Files.list(path)) {
                for (Path file : files.toList()) {
                    real.add(real(file));
                }
            }
        }
    }

    /** Files that the call has written. */
    void addWritten(List<Path> files) throws IOException {
        for (Path file : files) {
            real.add(real(file));
        }
    }

    /**
     * Requires that files of these names can be placed in a folder.
     *
     * @throws UnwritableOutputException if one would replace a file that is taken
     * @throws IOException if a link cannot be followed
     */
    void requireFree(Path target, List<String> names) throws IOException {
        for (String name : names) {
            if (real.contains(real(target.resolve(name)))) {
                throw new UnwritableOutputException("The file " + name
                        + " would replace one that this call reads or has written: choose another folder with --out.");
            }
        }
    }

    /** The file behind all links; of a file that is not there yet, its name in the real folder. */
    private static Path real(Path path) throws IOException {
        if (Files.exists(path)) {
            return path.toRealPath();
        }
        Path absolute = path.toAbsolutePath().normalize();
        Path parent = absolute.getParent();
        return parent != null && Files.exists(parent) ? parent.toRealPath().resolve(absolute.getFileName()) : absolute;
    }
}
