package workuptally.book.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Tells by its first bytes what a file is, whatever its ending says. */
public final class FileKind {
    private static final byte[] ZIP = {'P', 'K', 3, 4};
    private static final byte[] COMPOUND = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

    /** Name of the stream that holds the content of an encrypted workbook, as compound files write names. */
    private static final byte[] ENCRYPTED = "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE);

    private FileKind() {}

    /**
     * Refuses what cannot be a workbook, naming what it is.
     *
     * @throws UnreadableBookException if the file is no zip package
     * @throws IOException if it cannot be accessed
     */
    public static void requireWorkbook(Path path, long mostBytes) throws UnreadableBookException, IOException {
        String name = path.getFileName().toString();
        long size = Files.size(path);
        if (size == 0) {
            throw new UnreadableBookException(name + " is empty: save the book again, or take a copy of it.");
        }
        if (size > mostBytes) {
            throw new UnreadableBookException(name + " is larger than " + mostBytes / 1_000_000
                    + " MB: split the book, or check that it is the right file.");
        }
        byte[] start = start(path);
        if (startsWith(start, COMPOUND)) {
            throw new UnreadableBookException(
                    isEncrypted(path)
                            ? name + " is protected by a password: save it without one."
                            : name + " is a workbook of the old form (.xls): open it in a spreadsheet program and save"
                                    + " it as .xlsx.");
        }
        if (!startsWith(start, ZIP)) {
            throw new UnreadableBookException(
                    name.toLowerCase(Locale.ROOT).endsWith(".csv")
                            ? name
                                    + " is a single CSV file: give the folder that holds all tables of the book; for a list with"
                                    + " one row a run, 'workup-tally headings' proposes a headings file."
                            : name + " is no workbook, whatever its ending says: save it as .xlsx from a spreadsheet"
                                    + " program.");
        }
    }

    private static byte[] start(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(8);
        }
    }

    private static boolean startsWith(byte[] bytes, byte[] start) {
        for (int i = 0; i < start.length; i++) {
            if (i >= bytes.length || bytes[i] != start[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean isEncrypted(Path path) throws IOException {
        byte[] bytes = Files.readAllBytes(path);
        for (int at = 0; at + ENCRYPTED.length <= bytes.length; at++) {
            int i = 0;
            while (i < ENCRYPTED.length && bytes[at + i] == ENCRYPTED[i]) {
                i++;
            }
            if (i == ENCRYPTED.length) {
                return true;
            }
        }
        return false;
    }
}
