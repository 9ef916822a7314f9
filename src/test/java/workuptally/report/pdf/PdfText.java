package workuptally.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import workuptally.judgement.Review;
import workuptally.report.pdf.layout.PdfOptions;

/** What an independent reader gets out of a report. */
public final class PdfText {
    private PdfText() {}

    static byte[] bytes(Review review, PdfOptions options) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfReport.write(review, options, out);
        return out.toByteArray();
    }

    /** Text in the order of drawing, without any white space: line breaks inside a cell do not matter. */
    public static String dense(byte[] pdf) throws IOException {
        return dense(spaced(pdf));
    }

    /** Text in the order of drawing, words and cells parted by single blanks. */
    static String spaced(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(false);
            return stripper.getText(document).replaceAll("[\\s\\u00A0]+", " ");
        }
    }

    public static String dense(String text) {
        return text.replaceAll("[\\s\\u00A0]+", "");
    }

    /** How often a text occurs. */
    public static int count(String text, String part) {
        int count = 0;
        for (int at = text.indexOf(part); at >= 0; at = text.indexOf(part, at + part.length())) {
            count++;
        }
        return count;
    }

    /** Every glyph of one page, from 1. */
    static List<TextPosition> glyphs(PDDocument document, int page) throws IOException {
        List<TextPosition> glyphs = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                positions.stream().filter(p -> !p.getUnicode().isBlank()).forEach(glyphs::add);
            }
        };
        stripper.setSuppressDuplicateOverlappingText(false);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return glyphs;
    }
}
