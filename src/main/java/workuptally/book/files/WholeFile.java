package workuptally.book.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.Date;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/** Writes a file that appears whole or not at all, with the same bytes each time. */
public final class WholeFile {
    /** The one time that written parts carry, so that no clock gets into the file. */
    private static final LocalDateTime FIXED_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final Date FIXED_DATE = new Date(315_532_800_000L);

    private WholeFile() {}

    public static void write(SXSSFWorkbook workbook, Path target) throws IOException {
        POIXMLProperties.CoreProperties properties =
                workbook.getXSSFWorkbook().getProperties().getCoreProperties();
        properties.setCreated(Optional.of(FIXED_DATE));
        properties.setModified(Optional.of(FIXED_DATE));
        properties.setCreator("Workup Tally");
        // The library saves to memory: where a disk is full it would report on the terminal and not say why.
        ByteArrayOutputStream saved = new ByteArrayOutputStream();
        try {
            workbook.write(saved);
        } catch (OpenXML4JRuntimeException e) {
            // It keeps temporary files of its own, and does not say why it could not write one.
            throw new IOException(
                    "Temporary files cannot be written in " + System.getProperty("java.io.tmpdir")
                            + ": make room there and run again.",
                    e);
        }
        write(withFixedTimes(saved.toByteArray()), target);
    }

    private static byte[] withFixedTimes(byte[] zip) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipFile in = ZipFile.builder().setByteArray(zip).get();
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipArchiveEntry entry : Collections.list(in.getEntries())) {
                ZipEntry copy = new ZipEntry(entry.getName());
                copy.setTimeLocal(FIXED_TIME);
                out.putNextEntry(copy);
                try (InputStream content = in.getInputStream(entry)) {
                    content.transferTo(out);
                }
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    public static void write(byte[] bytes, Path target) throws IOException {
        Path beside = target.resolveSibling(target.getFileName() + ".part");
        try {
            Files.write(beside, bytes);
            Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
