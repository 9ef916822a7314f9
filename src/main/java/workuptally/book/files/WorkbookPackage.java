package workuptally.book.files;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** The zip package of a workbook with its parts and relationships, guarded by size caps; opened for reading only. */
public final class WorkbookPackage implements Closeable {
    /** An inflated part up to this size is read whatever it was compressed to. */
    private static final long HARMLESS_BYTES = 50_000_000;

    /** Above it, a part that inflates by more than this is refused; sheets of real books inflate 5 to 30 times. */
    private static final long MOST_INFLATION = 200;

    private final String file;
    private final ZipFile zip;
    private final ReadingOptions.SizeCaps caps;
    private final Map<String, ZipEntry> entries = new HashMap<>();
    private long bytesRead;

    /**
     * Opens a package.
     *
     * @throws UnreadableBookException if it is damaged or has too many parts
     */
    public WorkbookPackage(Path path, ReadingOptions.SizeCaps caps) throws UnreadableBookException, IOException {
        this.file = path.getFileName().toString();
        this.caps = caps;
        try {
            this.zip = new ZipFile(path.toFile(), StandardCharsets.UTF_8);
        } catch (ZipException damaged) {
            throw new UnreadableBookException(
                    file
                            + " is cut off or damaged: copy it again, or open, repair and save it in a spreadsheet program.",
                    damaged);
        }
        if (zip.size() > caps.entries()) {
            zip.close();
            throw new UnreadableBookException(file + " has more than " + caps.entries()
                    + " parts and was refused: check that it is the right file.");
        }
        Collections.list(zip.entries()).forEach(entry -> entries.putIfAbsent(key(entry.getName()), entry));
        refuseTooLarge();
    }

    /** Parts that are not read here are copied into the annotated workbook, so their sizes count too. */
    private void refuseTooLarge() throws UnreadableBookException, IOException {
        long total = 0;
        for (ZipEntry entry : entries.values()) {
            total += Math.max(0, entry.getSize());
            if (entry.getSize() > most(entry) || total > caps.totalBytes()) {
                zip.close();
                throw new UnreadableBookException(file + " expands too far in " + entry.getName()
                        + " and was refused: check that it is the right file, or split it.");
            }
        }
    }

    /** Bytes that a part may inflate to. */
    private long most(ZipEntry entry) {
        return Math.min(caps.entryBytes(), Math.max(HARMLESS_BYTES, entry.getCompressedSize() * MOST_INFLATION));
    }

    /** Part names count without regard to case (ISO/IEC 29500-2, 9.1.1). */
    private static String key(String part) {
        String name = part.replace('\\', '/').toLowerCase(Locale.ROOT);
        return name.startsWith("/") ? name.substring(1) : name;
    }

    public boolean has(String part) {
        return entries.containsKey(key(part));
    }

    /**
     * Opens a part.
     *
     * @throws UnreadableBookException if it is missing or damaged
     */
    public XmlPart open(String part) throws UnreadableBookException, IOException {
        ZipEntry entry = entries.get(key(part));
        if (entry == null) {
            throw new UnreadableBookException(
                    file + " lacks its part " + part + ": open it in a spreadsheet program, repair and save it.");
        }
        long most = Math.min(most(entry), caps.totalBytes() - bytesRead);
        try {
            return new XmlPart(file, part, new CappedStream(zip.getInputStream(entry), most));
        } catch (ZipException damaged) {
            throw new UnreadableBookException(
                    file + " is damaged in " + part + ": open it in a spreadsheet program, repair and save it.",
                    damaged);
        }
    }

    /** Counts what a part gave toward the total. */
    public void finished(XmlPart part) {
        bytesRead += part.bytesRead();
    }

    /**
     * A relationship.
     *
     * @param type last word of its type, {@code worksheet}; the namespaces of the two variants of the standard differ before it
     * @param target full name of the part it leads to
     */
    public record Relationship(String type, String target) {}

    /** Relationships of a part by id; of the package itself for an empty name. None if the part has no list of them. */
    public Map<String, Relationship> relationshipsOf(String part) throws UnreadableBookException, IOException {
        int slash = part.lastIndexOf('/');
        String folder = slash < 0 ? "" : part.substring(0, slash + 1);
        String list = folder + "_rels/" + part.substring(slash + 1) + ".rels";
        Map<String, Relationship> relationships = new HashMap<>();
        if (!has(list)) {
            return relationships;
        }
        try (XmlPart xml = open(list)) {
            while (xml.next()) {
                if (xml.isStart("Relationship")
                        && xml.attribute("TargetMode")
                                .filter("External"::equals)
                                .isEmpty()) {
                    String type = xml.attribute("Type").orElse("");
                    relationships.put(
                            xml.attribute("Id").orElse(""),
                            new Relationship(
                                    type.substring(type.lastIndexOf('/') + 1),
                                    resolve(folder, xml.attribute("Target").orElse(""))));
                }
            }
            finished(xml);
        }
        return relationships;
    }

    /** The target of the first relationship of a type. */
    public static Optional<String> target(Map<String, Relationship> relationships, String type) {
        return relationships.values().stream()
                .filter(relationship -> relationship.type().equals(type))
                .map(Relationship::target)
                .findFirst();
    }

    private static String resolve(String folder, String target) {
        if (target.startsWith("/")) {
            return target.substring(1);
        }
        Deque<String> path = new ArrayDeque<>();
        for (String step : (folder + target).split("/")) {
            if (step.equals("..")) {
                path.pollLast();
            } else if (!step.isEmpty() && !step.equals(".")) {
                path.addLast(step);
            }
        }
        return String.join("/", path);
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
