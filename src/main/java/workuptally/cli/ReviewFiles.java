package workuptally.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import workuptally.judgement.Review;
import workuptally.report.json.JsonReport;

/** Writes the files of one review beside its book or into another folder. */
final class ReviewFiles {
    private final Path target;
    private final Set<Path> taken;

    /**
     * Files for a folder.
     *
     * @param target folder to write to
     * @param taken files that must not be replaced: the inputs, and what other books of this call have written; grows by the files written
     */
    ReviewFiles(Path target, Set<Path> taken) {
        this.target = target;
        this.taken = taken;
    }

    /**
     * Writes all files of a review.
     *
     * @return the files, in the order in which a reader wants them
     * @throws IOException if they cannot be written; then none was
     */
    List<Path> write(Review review) throws IOException {
        try (StagedFiles files = new StagedFiles(target)) {
            json(review, add(files, review.book().name() + "-review.json"));
            List<Path> placed = files.place();
            placed.forEach(file -> taken.add(file.toAbsolutePath().normalize()));
            return placed;
        }
    }

    private Path add(StagedFiles files, String name) throws UnwritableOutputException {
        Path file = target.resolve(name).toAbsolutePath().normalize();
        if (taken.contains(file)) {
            throw new UnwritableOutputException("The file " + file.getFileName()
                    + " would replace one that this call reads or has written: choose another folder with --out.");
        }
        return files.add(name);
    }

    private static void json(Review review, Path file) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            JsonReport.write(review, out);
        }
    }
}
