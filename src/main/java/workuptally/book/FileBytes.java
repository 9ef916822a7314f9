package workuptally.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import workuptally.model.InputFile;

/**
 * An input file held in memory, so that what is hashed is what is read.
 *
 * @param name file name without folders
 * @param bytes its content; not to be changed
 */
record FileBytes(String name, byte[] bytes) {
    /**
     * Reads a file.
     *
     * @param mostBytes size above which it is refused
     * @throws UnreadableBookException if it is too large
     * @throws IOException if it cannot be accessed
     */
    static FileBytes read(Path file, long mostBytes) throws UnreadableBookException, IOException {
        String name = file.getFileName().toString();
        if (Files.size(file) > mostBytes) {
            throw new UnreadableBookException(name + " is larger than " + mostBytes / 1_000_000
                    + " MB: split the book, or check that it is the right file.");
        }
        return new FileBytes(name, Files.readAllBytes(file));
    }

    InputFile asInputFile() {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
            return new InputFile(name, HexFormat.of().formatHex(hash));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java runtime has SHA-256", missing);
        }
    }
}
