package workuptally.report.workbook;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** The parts of the user's workbook, only ever read. Part names begin without a slash, {@code xl/workbook.xml}. */
final class BookPackage implements Closeable {
    private static final String CONTENT_TYPES = "[Content_Types].xml";
    private static final String WORKSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
    private static final String SHARED_STRINGS =
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml";
    private static final String STRICT = "http://purl.oclc.org/ooxml/";
    private static final String THREADED_COMMENTS =
            "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment";

    private final ZipFile zip;
    private final Map<String, ZipArchiveEntry> entries = new HashMap<>();
    private final Set<String> worksheets;
    private final Set<String> sharedStrings;

    private BookPackage(ZipFile zip) throws IOException {
        this.zip = zip;
        Collections.list(zip.getEntriesInPhysicalOrder()).stream()
                .filter(entry -> !entry.isDirectory())
                .forEach(entry -> entries.putIfAbsent(entry.getName(), entry));
        worksheets = typed(WORKSHEET);
        sharedStrings = typed(SHARED_STRINGS);
    }

    /**
     * Opens a workbook.
     *
     * @throws IOException if it is no workbook package, or one in the strict variant of the format, which cannot be carried over
     */
    static BookPackage open(Path workbook) throws IOException {
        ZipFile zip = ZipFile.builder().setPath(workbook).get();
        try {
            BookPackage book = new BookPackage(zip);
            book.refuseStrict();
            return book;
        } catch (IOException | RuntimeException e) {
            zip.close();
            throw e;
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

    /** True where the book was signed; its signature does not cover what is added. */
    boolean isSigned() {
        return entries.keySet().stream().anyMatch(name -> name.startsWith("_xmlsignatures/"));
    }

    /** Content of a part. */
    InputStream read(String part) throws IOException {
        return zip.getInputStream(entries.get(part));
    }

    /** Copies a part as it is stored, without unpacking it. */
    void copyRaw(String part, ZipArchiveOutputStream out) throws IOException {
        ZipArchiveEntry stored = entries.get(part);
        if (stored.getMethod() != ZipEntry.DEFLATED && stored.getMethod() != ZipEntry.STORED) {
            throw new IOException("the part " + part + " of the workbook is packed in a way that is not supported");
        }
        ZipArchiveEntry entry = FixedZip.entry(part);
        entry.setMethod(stored.getMethod());
        entry.setSize(stored.getSize());
        entry.setCompressedSize(stored.getCompressedSize());
        entry.setCrc(stored.getCrc());
        try (InputStream raw = zip.getRawInputStream(stored)) {
            out.addRawArchiveEntry(entry, raw);
        }
    }

    /**
     * Writes the package with every sheet's cells and all shared texts left out; small, whatever the size of the book.
     *
     * @param target where to, stored without compression
     * @param marks marks by part of a sheet
     * @return style numbers that the marked cells have now, by part
     */
    Map<String, CellStyles> writeStub(OutputStream target, Map<String, SheetMarks> marks) throws IOException {
        Map<String, CellStyles> styles = new HashMap<>();
        try (ZipArchiveOutputStream out = FixedZip.stored(target)) {
            for (String part : inOrder()) {
                out.putArchiveEntry(FixedZip.entry(part));
                if (worksheets.contains(part)) {
                    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
                    styles.put(part, SheetScan.scan(read(part), writer, Optional.ofNullable(marks.get(part))));
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
        return styles;
    }

    /** Cells of a sheet that have a threaded comment, as references. */
    Set<String> threadedComments(String sheetPart) throws IOException {
        Set<String> references = new HashSet<>();
        for (Relationship relationship : relationships(sheetPart)) {
            if (relationship.type().equals(THREADED_COMMENTS) && has(relationship.target())) {
                for (Map<String, String> comment : attributes(relationship.target(), "threadedComment", "ref")) {
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
        return attributes(CONTENT_TYPES, "Override", "PartName", "ContentType").stream()
                .filter(part -> contentType.equals(part.get("ContentType")))
                .map(part -> part.getOrDefault("PartName", "").substring(1))
                .collect(Collectors.toUnmodifiableSet());
    }

    private void refuseStrict() throws IOException {
        for (Relationship relationship : relationships("")) {
            if (relationship.type().startsWith(STRICT)) {
                throw new IOException("the workbook is saved as 'Strict Open XML', which cannot be annotated; "
                        + "save it as an ordinary .xlsx workbook");
            }
        }
    }

    private List<Relationship> relationships(String part) throws IOException {
        int slash = part.lastIndexOf('/') + 1;
        String folder = part.substring(0, slash);
        String relationships = folder + "_rels/" + part.substring(slash) + ".rels";
        if (!has(relationships)) {
            return List.of();
        }
        return attributes(relationships, "Relationship", "Type", "Target").stream()
                .map(r -> new Relationship(r.getOrDefault("Type", ""), resolve(folder, r.getOrDefault("Target", ""))))
                .toList();
    }

    private static String resolve(String folder, String target) {
        return target.startsWith("/")
                ? target.substring(1)
                : Path.of("/" + folder).resolve(target).normalize().toString().substring(1);
    }

    private List<Map<String, String>> attributes(String part, String element, String... names) throws IOException {
        List<Map<String, String>> found = new java.util.ArrayList<>();
        try (Reader text = PartText.open(read(part))) {
            Markup markup = new Markup(text, Writer.nullWriter());
            while (markup.next()) {
                if (markup.is(element) && !markup.isEnd()) {
                    Map<String, String> values = new HashMap<>();
                    for (String name : names) {
                        markup.attribute(name).ifPresent(value -> values.put(name, value));
                    }
                    found.add(values);
                }
            }
        }
        return found;
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    private record Relationship(String type, String target) {}
}
