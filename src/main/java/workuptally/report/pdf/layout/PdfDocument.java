package workuptally.report.pdf.layout;

import com.lowagie.text.Document;
import com.lowagie.text.ExceptionConverter;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import workuptally.report.view.wording.ReadableNumbers;

/**
 * What stands around the content of every document: fonts, page frame, and what makes it archivable and accessible.
 *
 * @param title title of the document
 * @param toolVersion version of the tool
 * @param about what the foot of each page says of the inputs
 * @param date date from the input that the file bears; without one it bears none
 * @param inputs text that differs where the inputs differ
 */
public record PdfDocument(String title, String toolVersion, String about, Optional<LocalDate> date, String inputs) {
    /**
     * Writes the document.
     *
     * @param content fills the pages
     * @param out where to; left open
     * @throws IOException if writing fails
     */
    public void write(PdfOptions options, Consumer<PageFlow> content, OutputStream out) throws IOException {
        try {
            compose(options, content, out);
        } catch (ExceptionConverter wrapped) {
            // The library wraps what the stream reports, a full disk for example.
            if (wrapped.getException() instanceof IOException unwritable) {
                throw unwritable;
            }
            throw wrapped;
        }
    }

    private void compose(PdfOptions options, Consumer<PageFlow> content, OutputStream out) throws IOException {
        PdfOptions.Paper paper = options.paper();
        Look look = new Look(
                new Typeface(),
                new Palette(),
                new ReadableNumbers(options.decimalMark().mark()),
                PageFlow.textWidth(paper.widthPoints()));
        Document document = new Document(new Rectangle(paper.widthPoints(), paper.heightPoints()), 0, 0, 0, 0);
        PdfWriter writer = PdfWriter.getInstance(document, out);
        writer.setCloseStream(false);
        String creator = "Workup Tally " + toolVersion;
        ArchiveEnvelope envelope = new ArchiveEnvelope(writer, title, creator, date);
        envelope.beforeOpen();
        document.open();
        PageFlow flow = new PageFlow(document, writer, look, creator + " · " + about);
        content.accept(flow);
        replacements(flow);
        flow.finish();
        envelope.beforeClose(title + creator + options.paper() + options.decimalMark() + inputs, options.attachment());
        document.close();
    }

    private static void replacements(PageFlow flow) {
        Look look = flow.look();
        if (look.typeface().replaced() > 0) {
            flow.add(List.of(new Paragraph(
                    look,
                    "Characters that the fonts of this document lack are shown as " + Typeface.REPLACEMENT
                            + "; the book has them as typed.",
                    look.caption())));
        }
    }
}
