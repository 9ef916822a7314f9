package workuptally.report.workbook;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.io.input.BoundedInputStream;

/** The parts of the user's workbook, only ever read. Part names begin without a slash, {@code xl/workbook.xml}. */
final class BookPackage implements Closeable {
    private static final String CONTENT_TYPES = "[Content_Types].xml";
    private static final String WORKSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
    private static final String SHARED_STRINGS =
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml";
    private static final String STRICT = "http://purl.oclc.org/ooxml/";
    private static final int MOST_OF_A_ROOT = 4096;
    private static final String THREADED_COMMENTS =
            "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment";

    private final ZipFile zip;
    private final Optional<Path> scratch;
    private final Map<String, ZipArchiveEntry> entries = new HashMap<>();
    private final Set<String> worksheets;
    private final Set<String> sharedStrings;
    private final Map<String, String> sheetNames;

    private BookPackage(ZipFile zip, Optional<Path> scratch) throws IOException {
        this.zip = zip;
        this.scratch = scratch;
        Collections.list(zip.getEntriesInPhysicalOrder()).stream()
                .filter(entry -> !entry.isDirectory())
                .forEach(entry -> entries.putIfAbsent(entry.getName(), entry));
        sheetNames = readSheetNames();
        worksheets = typed(WORKSHEET);
        sharedStrings = typed(SHARED_STRINGS);
    }

    /**
     * Opens a workbook.
     *
     * @param scratch where a copy of one in the strict variant of the format may be made; removed again when the package is closed
     * @throws IOException if it is no workbook package
     */
    static BookPackage open(Path workbook, Path scratch) throws IOException {
        ZipFile zip = ZipFile.builder().setPath(workbook).get();
        try {
            if (isStrict(zip)) {
                try (zip) {
                    TransitionalCopy.write(zip, scratch);
                }
                return new BookPackage(ZipFile.builder().setPath(scratch).get(), Optional.of(scratch));
            }
            return new BookPackage(zip, Optional.empty());
        } catch (IOException | RuntimeException e) {
            zip.close();
            Files.deleteIfExists(scratch);
            throw e;
        }
    }

    private static boolean isStrict(ZipFile zip) throws IOException {
        ZipArchiveEntry root = zip.getEntry("_rels/.rels");
        if (root == null) {
            return false;
        }
        try (InputStream in = zip.getInputStream(root)) {
            return new String(in.readNBytes(MOST_OF_A_ROOT), StandardCharsets.ISO_8859_1).contains(STRICT);
        }
    }

    /** True for a part of that name. */
    boolean has(String part) {
        return entries.containsKey(part);
    }

    /** True for a part that holds a sheet of cells. */
    boolean isWorksheet(String part) {
        return worksheets.contains(part);
    }

    /** Name of each sheet, by its part. */
    Map<String, String> sheetNames() {
        return sheetNames;
    }

    private Map<String, String> readSheetNames() throws IOException {
        Map<String, String> names = new LinkedHashMap<>();
        for (Relationship start : relationships("")) {
            if (start.type().endsWith("/officeDocument") && has(start.target())) {
                Map<String, String> targets = new HashMap<>();
                relationships(start.target()).forEach(r -> targets.put(r.id(), r.target()));
                for (Map<String, String> sheet : attributes(start.target(), "sheet")) {
                    String part = targets.get(sheet.getOrDefault("id", ""));
                    if (part != null) {
                        names.put(part, sheet.getOrDefault("name", ""));
                    }
                }
            }
        }
        return names;
    }

    /** Content of a part, which ends with an error where it is longer than the package says. */
    InputStream read(String part) throws IOException {
        ZipArchiveEntry entry = entries.get(part);
        return BoundedInputStream.builder()
                .setInputStream(zip.getInputStream(entry))
                .setMaxCount(entry.getSize() + 1)
                .setOnMaxCount((most, count) -> {
                    throw new IOException("the part " + part + " of the workbook is longer than its package says");
                })
                .get();
    }

    /** Copies a part as it is stored, without unpacking it. */
    void copyRaw(String part, ZipArchiveOutputStream out) throws IOException {
        ZipArchiveEntry stored = entries.get(part);
        if (stored.getMethod() != ZipEntry.DEFLATED && stored.getMethod() != ZipEntry.STORED) {
            throw new IOException("the part " + part + " of the workbook is packed in a way that is not supported");
        }
        FixedZip.copyRaw(zip, stored, out);
    }

    /**
     * Writes the package with every sheet's cells and all shared texts left out; small, whatever the size of the book.
     *
     * @param target where to, stored without compression
     * @param marks marks by part of a sheet
     * @return what was noted about each sheet, by part
     */
    Map<String, ScannedSheet> writeStub(OutputStream target, Map<String, SheetMarks> marks) throws IOException {
        Map<String, ScannedSheet> scanned = new HashMap<>();
        try (ZipArchiveOutputStream out = FixedZip.stored(target)) {
            for (String part : inOrder()) {
                out.putArchiveEntry(FixedZip.entry(part));
                if (worksheets.contains(part)) {
                    Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), 1 << 16);
                    scanned.put(part, SheetScan.scan(read(part), writer, marks.getOrDefault(part, SheetMarks.none())));
                    writer.flush();
                } else if (sharedStrings.contains(part)) {
                    out.write("<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"/>"
                            .getBytes(StandardCharsets.UTF_8));
                } else {
                    try (InputStream in = read(part)) {
                        in.transferTo(out);
                    }
                }
                out.closeArchiveEntry();
            }
        }
        return scanned;
    }

    /** Cells of a sheet that have a threaded comment, as references. */
    Set<String> threadedComments(String sheetPart) throws IOException {
        Set<String> references = new HashSet<>();
        for (Relationship relationship : relationships(sheetPart)) {
            if (relationship.type().equals(THREADED_COMMENTS) && has(relationship.target())) {
                for (Map<String, String> comment : attributes(relationship.target(), "threadedComment")) {
                    references.add(
                            comment.getOrDefault("ref", "").replace("$", "").toUpperCase(Locale.ROOT));
                }
            }
        }
        return references;
    }

    private List<String> inOrder() {
        return FixedZip.inOrder(entries.keySet());
    }

    private Set<String> typed(String contentType) throws IOException {
        if (!has(CONTENT_TYPES)) {
            throw new IOException("the file is no workbook: it has no list of its parts");
        }
        Map<String, String> types = new HashMap<>();
        for (Map<String, String> part : attributes(CONTENT_TYPES, "Override")) {
            String name = part.getOrDefault("PartName", "");
            types.put(name.startsWith("/") ? name.substring(1) : name, part.getOrDefault("ContentType", ""));
        }
        Set<String> typed = new HashSet<>();
        types.forEach((name, type) -> {
            if (type.equals(contentType)) {
                typed.add(name);
            }
        });
        // A type may stand once for all parts of an ending; a sheet is one only where the book lists it.
        for (Map<String, String> ending : attributes(CONTENT_TYPES, "Default")) {
            String extension = "." + ending.getOrDefault("Extension", "").toLowerCase(Locale.ROOT);
            if (contentType.equals(ending.get("ContentType"))) {
                sheetNames.keySet().stream()
                        .filter(name -> name.toLowerCase(Locale.ROOT).endsWith(extension) && !types.containsKey(name))
                        .forEach(typed::add);
            }
        }
        return Set.copyOf(typed);
    }

    /** Targets outside the package as they were written, by their ids in a list of relationships; none if the book has no such list. */
    Map<String, String> externalTargets(String list) throws IOException {
        Map<String, String> targets = new HashMap<>();
        for (Map<String, String> r : has(list) ? attributes(list, "Relationship") : List.<Map<String, String>>of()) {
            if (isExternal(r)) {
                targets.put(r.getOrDefault("Id", ""), r.getOrDefault("Target", ""));
            }
        }
        return targets;
    }

    private static boolean isExternal(Map<String, String> relationship) {
        return "External".equals(relationship.get("TargetMode"));
    }

    private List<Relationship> relationships(String part) throws IOException {
        int slash = part.lastIndexOf('/') + 1;
        String folder = part.substring(0, slash);
        String relationships = folder + "_rels/" + part.substring(slash) + ".rels";
        if (!has(relationships)) {
            return List.of();
        }
        return attributes(relationships, "Relationship").stream()
                .filter(r -> !isExternal(r))
                .map(r -> new Relationship(
                        r.getOrDefault("Id", ""),
                        r.getOrDefault("Type", ""),
                        resolve(folder, r.getOrDefault("Target", ""))))
                .toList();
    }

    private static String resolve(String folder, String target) {
        return target.startsWith("/")
                ? target.substring(1)
                : Path.of("/" + folder).resolve(target).normalize().toString().substring(1);
    }

    /** Attributes of all elements of a name, by local name. */
    private List<Map<String, String>> attributes(String part, String element) throws IOException {
        List<Map<String, String>> found = new ArrayList<>();
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        // Without one the library reports some faults on the terminal, beside the exception.
        factory.setXMLReporter((message, type, information, location) -> {});
        try (InputStream in = read(part)) {
            XMLStreamReader xml = factory.createXMLStreamReader(in);
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals(element)) {
                    Map<String, String> values = new HashMap<>();
                    for (int i = 0; i < xml.getAttributeCount(); i++) {
                        values.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
                    }
                    found.add(values);
                }
            }
        } catch (XMLStreamException e) {
            throw new IOException("the part " + part + " of the workbook is damaged", e);
        }
        return found;
    }

    @Override
    public void close() throws IOException {
        zip.close();
        if (scratch.isPresent()) {
            Files.deleteIfExists(scratch.get());
        }
    }

    private record Relationship(String id, String type, String target) {}
}
