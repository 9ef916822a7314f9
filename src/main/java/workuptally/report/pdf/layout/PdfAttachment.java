package workuptally.report.pdf.layout;

import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfFileSpecification;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** A JSON file that travels inside the report. */
public final class PdfAttachment {
    private static final String JSON = "application/json";
    private static final int SMALLEST = 9;

    private final String fileName;
    private final Content content;

    private PdfAttachment(String fileName, Content content) {
        this.fileName = Objects.requireNonNull(fileName, "fileName");
        this.content = content;
    }

    /**
     * A file to attach.
     *
     * @param fileName name without folders, for example {@code week-10-review.json}
     * @param bytes its content, UTF-8 JSON
     */
    public PdfAttachment(String fileName, byte[] bytes) {
        this(fileName, new Bytes(bytes.clone()));
    }

    /**
     * A file that is copied from the disk when the report is written, so that a large one never stands in memory whole.
     *
     * @param fileName name without folders under which it is attached
     * @param file where it is, UTF-8 JSON
     */
    public static PdfAttachment ofFile(String fileName, Path file) {
        return new PdfAttachment(fileName, new OnDisk(file));
    }

    /** Name without folders. */
    public String fileName() {
        return fileName;
    }

    PdfFileSpecification embed(PdfWriter writer, PdfDictionary parameters) throws IOException {
        return content.embed(writer, fileName, parameters);
    }

    private sealed interface Content permits Bytes, OnDisk {
        PdfFileSpecification embed(PdfWriter writer, String name, PdfDictionary parameters) throws IOException;
    }

    private record Bytes(byte[] bytes) implements Content {
        @Override
        public PdfFileSpecification embed(PdfWriter writer, String name, PdfDictionary parameters) throws IOException {
            parameters.put(PdfName.SIZE, new PdfNumber(bytes.length));
            return PdfFileSpecification.fileEmbedded(writer, name, name, bytes, JSON, parameters, SMALLEST);
        }
    }

    private record OnDisk(Path file) implements Content {
        @Override
        public PdfFileSpecification embed(PdfWriter writer, String name, PdfDictionary parameters) throws IOException {
            parameters.put(PdfName.SIZE, new PdfNumber(Files.size(file)));
            return PdfFileSpecification.fileEmbedded(writer, file.toString(), name, null, JSON, parameters, SMALLEST);
        }
    }
}
