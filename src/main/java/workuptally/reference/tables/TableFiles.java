package workuptally.reference.tables;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The files of the reference tables: those packed with the program, and a laboratory's own over them. */
public final class TableFiles {
    private static final String DATA = "/workuptally/reference/data/";
    private static final long MOST_BYTES = 4_000_000;

    private TableFiles() {}

    /** The tables packed with the program; read at the first call. */
    public static Map<KnownTable, TableFile> packed() {
        return Packed.FILES;
    }

    private static final class Packed {
        static final Map<KnownTable, TableFile> FILES = files();

        private static Map<KnownTable, TableFile> files() {
            try {
                return Collections.unmodifiableMap(read());
            } catch (IllegalReferenceException damaged) {
                throw new IllegalStateException(damaged.getMessage(), damaged);
            }
        }
    }

    private static Map<KnownTable, TableFile> read() throws IllegalReferenceException {
        Map<KnownTable, TableFile> files = new EnumMap<>(KnownTable.class);
        for (KnownTable table : KnownTable.values()) {
            String name = DATA + table.fileName();
            try (InputStream stream = TableFiles.class.getResourceAsStream(name)) {
                if (stream == null) {
                    throw new IllegalReferenceException(table.fileName(), "is missing from the program");
                }
                files.put(
                        table,
                        TableFile.read(
                                table,
                                table.fileName(),
                                new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))));
            } catch (IllegalReferenceException e) {
                throw e;
            } catch (IOException e) {
                throw new IllegalReferenceException(table.fileName(), "cannot be read: " + e.getMessage(), e);
            }
        }
        return files;
    }

    /**
     * The packed tables with the rows of a folder over them.
     *
     * @throws IllegalReferenceException if there is none, or a file is unknown, too large, not UTF-8 or malformed
     */
    public static Map<KnownTable, TableFile> overriddenBy(Path directory) throws IllegalReferenceException {
        try {
            Map<KnownTable, TableFile> files = new EnumMap<>(packed());
            for (Path file : overrides(directory)) {
                String shown = file.getFileName().toString();
                Optional<KnownTable> table = KnownTable.ofFile(shown);
                if (table.isEmpty()) {
                    throw new IllegalReferenceException(shown, "is no reference table; the tables are " + tableNames());
                }
                TableFile own = TableFile.read(table.get(), shown, boundedText(file, shown));
                files.put(table.get(), files.get(table.get()).overriddenBy(own, shown));
            }
            return files;
        } catch (IllegalReferenceException e) {
            throw e;
        } catch (IOException e) {
            throw new IllegalReferenceException(directory.toString(), "cannot be read: " + e.getMessage(), e);
        }
    }

    private static String tableNames() {
        return String.join(
                ", ", Stream.of(KnownTable.values()).map(KnownTable::fileName).toList());
    }

    private static List<Path> overrides(Path directory) throws IOException {
        if (!Files.isDirectory(directory)) {
            throw new IllegalReferenceException(
                    directory.toString(), "is no folder: give the one that holds your own tables.");
        }
        try (Stream<Path> entries = Files.list(directory)) {
            List<Path> own = entries.filter(
                            path -> path.getFileName().toString().endsWith(".csv"))
                    .sorted()
                    .toList();
            if (own.isEmpty()) {
                throw new IllegalReferenceException(
                        directory.toString(),
                        "holds no table: give the folder with your own; they are named " + tableNames());
            }
            return own;
        }
    }

    private static Reader boundedText(Path file, String shown) throws IOException {
        // What is read counts, not the size that the file system names: a device names none.
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes((int) MOST_BYTES + 1);
        }
        if (bytes.length > MOST_BYTES) {
            throw new IllegalReferenceException(shown, "is larger than " + MOST_BYTES / 1_000_000 + " MB");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new StringReader(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            throw new IllegalReferenceException(shown, "is not UTF-8 text", e);
        }
    }
}
