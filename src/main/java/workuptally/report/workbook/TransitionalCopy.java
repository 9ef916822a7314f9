package workuptally.report.workbook;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * A workbook of the strict variant of the format written in the transitional one, which spreadsheet libraries know: both have the same
 * elements under other namespaces (ISO/IEC 29500-1 and -4). Everything else stays, byte by byte.
 */
final class TransitionalCopy {
    private static final String STRICT = "http://purl.oclc.org/ooxml/";

    /** The longer ones first: a name that begins like another must not be taken for it. */
    private static final List<Map.Entry<String, String>> NAMES = List.of(
            name(
                    "officeDocument/relationships/extendedProperties",
                    "officeDocument/2006/relationships/extended-properties"),
            name(
                    "officeDocument/relationships/customProperties",
                    "officeDocument/2006/relationships/custom-properties"),
            name("officeDocument/relationships/metadata/thumbnail", "package/2006/relationships/metadata/thumbnail"),
            name("officeDocument/extendedProperties", "officeDocument/2006/extended-properties"),
            name("officeDocument/customProperties", "officeDocument/2006/custom-properties"),
            name("officeDocument/", "officeDocument/2006/"),
            name("spreadsheetml/", "spreadsheetml/2006/"),
            name("drawingml/", "drawingml/2006/"),
            Map.entry("conformance=\"strict\"", "conformance=\"transitional\""));

    private static final byte[][] BEFORE = bytes(NAMES.stream().map(Map.Entry::getKey));
    private static final byte[][] AFTER = bytes(NAMES.stream().map(Map.Entry::getValue));
    private static final int LONGEST =
            NAMES.stream().mapToInt(name -> name.getKey().length()).max().orElseThrow();

    private TransitionalCopy() {}

    private static Map.Entry<String, String> name(String strict, String transitional) {
        return Map.entry(STRICT + strict, "http://schemas.openxmlformats.org/" + transitional);
    }

    private static byte[][] bytes(java.util.stream.Stream<String> names) {
        return names.map(name -> name.getBytes(StandardCharsets.US_ASCII)).toArray(byte[][]::new);
    }

    /** Writes the copy. */
    static void write(ZipFile strict, Path target) throws IOException {
        try (OutputStream file = Files.newOutputStream(target);
                ZipArchiveOutputStream out = FixedZip.compressed(file)) {
            for (ZipArchiveEntry entry : Collections.list(strict.getEntriesInPhysicalOrder())) {
                if (entry.isDirectory()) {
                    continue;
                }
                out.putArchiveEntry(FixedZip.entry(entry.getName()));
                try (InputStream in = new BufferedInputStream(strict.getInputStream(entry), 1 << 16)) {
                    boolean text =
                            entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels");
                    if (text) {
                        rename(in, out);
                    } else {
                        in.transferTo(out);
                    }
                }
                out.closeArchiveEntry();
            }
        }
    }

    /** Passes text on with the names of one variant put in place of those of the other; a part may be larger than the memory. */
    private static void rename(InputStream in, OutputStream out) throws IOException {
        for (int read = in.read(); read >= 0; read = in.read()) {
            if (read != 'h' && read != 'c') {
                out.write(read);
                continue;
            }
            in.mark(LONGEST);
            byte[] ahead = in.readNBytes(LONGEST - 1);
            in.reset();
            int name = named((byte) read, ahead);
            if (name < 0) {
                out.write(read);
            } else {
                out.write(AFTER[name]);
                in.skipNBytes(BEFORE[name].length - 1L);
            }
        }
    }

    private static int named(byte first, byte[] ahead) {
        for (int i = 0; i < BEFORE.length; i++) {
            byte[] name = BEFORE[i];
            if (name[0] == first
                    && ahead.length >= name.length - 1
                    && java.util.Arrays.equals(name, 1, name.length, ahead, 0, name.length - 1)) {
                return i;
            }
        }
        return -1;
    }
}
