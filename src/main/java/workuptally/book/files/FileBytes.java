package workuptally.book.files;

import java.io.IOException;
import java.io.InputStream;
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
public record FileBytes(String name, byte[] bytes) {
    /**
     * Reads a file.
     *
     * @param mostBytes size above which it is refused
     * @throws UnreadableBookException if it is a folder or too large
     * @throws IOException if it cannot be accessed
     */
    public static FileBytes read(Path file, long mostBytes) throws UnreadableBookException, IOException {
        if (Files.isDirectory(file)) {
            throw new UnreadableBookException(file + " is a folder: name a file.");
        }
        String name = file.getFileName().toString();
        // What is read counts, not the size that the file system names: a device names none.
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes((int) Math.min(mostBytes + 1, Integer.MAX_VALUE - 16));
            if (bytes.length > mostBytes) {
                throw new UnreadableBookException(name + " is larger than " + mostBytes / 1_000_000
                        + " MB: split the book, or check that it is the right file.");
            }
            return new FileBytes(name, bytes);
        }
    }

    public InputFile asInputFile() {
        return new InputFile(name, HexFormat.of().formatHex(sha256().digest(bytes)));
    }

    /** Hashes a file without keeping it in memory. */
    public static InputFile hash(Path file) throws IOException {
        MessageDigest digest = sha256();
        byte[] buffer = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(file)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                digest.update(buffer, 0, read);
            }
        }
        return new InputFile(file.getFileName().toString(), HexFormat.of().formatHex(digest.digest()));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java runtime has SHA-256", missing);
        }
    }
}
