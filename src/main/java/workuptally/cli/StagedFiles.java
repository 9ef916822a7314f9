package workuptally.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import workuptally.model.InputFile;
import workuptally.report.workbook.UnannotatableBookException;

/**
 * Files that appear together or not at all. They are written into a hidden folder within their target, on the same file system, and then
 * moved into place one after the other, a manifest last; when a move fails, the files moved so far are taken back and those they replaced
 * return. Each move replaces a file at once, so that a program that is stopped anywhere leaves whole files only, and the next one places
 * the rest of the set.
 */
final class StagedFiles implements AutoCloseable {
    private final Path target;
    private final StagingFolder folder;
    private final String manifestName;
    private final List<String> names = new ArrayList<>();
    private final Map<String, String> hashes = new ConcurrentHashMap<>();

    /**
     * Prepares a target folder, which is made if it is not there.
     *
     * @param setName name of the set, for its manifest
     * @throws UnwritableOutputException if nothing can be written there
     */
    StagedFiles(Path target, String setName) throws UnwritableOutputException {
        this.target = target;
        this.manifestName = setName + Placement.ENDING;
        try {
            Files.createDirectories(target);
            folder = StagingFolder.in(target);
        } catch (IOException e) {
            String file = Files.isRegularFile(target) ? ", which is a file" : "";
            throw new UnwritableOutputException(
                    "Nothing can be written to " + target + file + ": choose another folder with --out.", e);
        }
    }

    /** Where the file of that name is to be written; it is placed with the others. */
    Path add(String name) {
        names.add(name);
        return folder.path().resolve(name);
    }

    /**
     * Takes the hash of a file that is written to its end. Whoever writes several at once calls it with each, beside the others; what was
     * not finished so is hashed when it is placed.
     */
    void finished(Path file) throws IOException {
        hashes.put(file.getFileName().toString(), Placement.sha256(file));
    }

    /** A file that is needed on the way and not placed. */
    Path scratch(String name) {
        return folder.path().resolve("scratch-" + name);
    }

    /**
     * Moves all files into place, their manifest last.
     *
     * @param inputs what was read for them
     * @return the placed files in order, and what was kept aside
     * @throws UnwritableOutputException if one cannot be placed; then the folder is as it was before
     */
    Placed place(List<InputFile> inputs) throws UnwritableOutputException {
        try {
            PlacingTurn turn = PlacingTurn.take(target);
            try {
                Placement placement = new Placement(target, folder.path(), manifestName);
                placement.seal(Version.number(), inputs, hashed());
                List<Path> aside = folder.whole(placement::place);
                return new Placed(names.stream().map(target::resolve).toList(), aside);
            } finally {
                turn.end();
            }
        } catch (IOException e) {
            throw new UnwritableOutputException(
                    "The files could not be placed in " + target + ": " + reason(e)
                            + " Close them in other programs and run again; the folder is as it was.",
                    e);
        }
    }

    private List<InputFile> hashed() throws IOException {
        List<InputFile> files = new ArrayList<>();
        for (String name : names) {
            if (!hashes.containsKey(name)) {
                finished(folder.path().resolve(name));
            }
            files.add(new InputFile(name, hashes.get(name)));
        }
        return files;
    }

    /** What is said where a file cannot be written, for example to a full disk: the system does not say where. */
    UnwritableOutputException unwritten(IOException failure) {
        if (failure instanceof UnannotatableBookException) {
            return new UnwritableOutputException(failure.getMessage(), failure);
        }
        return new UnwritableOutputException(
                "The files could not be written to " + target + ": " + reason(failure)
                        + " Nothing was placed there; make room, or choose another folder with --out.",
                failure);
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
