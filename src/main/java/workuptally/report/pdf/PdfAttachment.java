package workuptally.report.pdf;

import java.util.Objects;

/** A JSON file that travels inside the report. */
public final class PdfAttachment {
    private final String fileName;
    private final byte[] bytes;

    /**
     * A file to attach.
     *
     * @param fileName name without folders, for example {@code week-10-review.json}
     * @param bytes its content, UTF-8 JSON
     */
    public PdfAttachment(String fileName, byte[] bytes) {
        this.fileName = Objects.requireNonNull(fileName, "fileName");
        this.bytes = bytes.clone();
    }

    /** Name without folders. */
    public String fileName() {
        return fileName;
    }

    /** A copy of the content. */
    public byte[] bytes() {
        return bytes.clone();
    }
}
