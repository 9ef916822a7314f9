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
    private final Path file;

    private PdfAttachment(String fileName, Path file) {
        this.fileName = Objects.requireNonNull(fileName, "fileName");
        this.file = Objects.requireNonNull(file, "file");
    }

    /**
     * A file that is copied from the disk when the report is written, so that a large one never stands in memory whole.
     *
     * @param fileName name without folders under which it is attached, for example {@code week-10-review.json}
     * @param file where it is, UTF-8 JSON
     */
    public static PdfAttachment ofFile(String fileName, Path file) {
        return new PdfAttachment(fileName, file);
    }

    /** Name without folders. */
    public String fileName() {
        return fileName;
    }

    PdfFileSpecification embed(PdfWriter writer, PdfDictionary parameters) throws IOException {
        parameters.put(PdfName.SIZE, new PdfNumber(Files.size(file)));
        return PdfFileSpecification.fileEmbedded(writer, file.toString(), fileName, null, JSON, parameters, SMALLEST);
    }
}
