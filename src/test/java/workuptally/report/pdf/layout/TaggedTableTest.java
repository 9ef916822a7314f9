package workuptally.report.pdf.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import workuptally.report.pdf.PdfText;
import workuptally.report.view.wording.ReadableNumbers;

/** Guards against rows that vanish without an error. */
class TaggedTableTest {
    private static final float WIDTH = 300;

    @Test
    void everyRowOfALongTableIsDrawnOnce() throws IOException {
        List<List<TableCell>> rows = new ArrayList<>();
        for (int i = 0; i < 700; i++) {
            rows.add(List.of(TableCell.bold("<row%04d>".formatted(i)), TableCell.of("text ".repeat(i % 40))));
        }
        String text = PdfText.dense(draw(rows));
        for (int i = 0; i < 700; i++) {
            assertEquals(1, PdfText.count(text, "<row%04d>".formatted(i)), "row " + i);
        }
    }

    @Test
    void rowTallerThanAPageIsBrokenAndNothingAfterItIsLost() throws IOException {
        StringBuilder tall = new StringBuilder();
        for (int i = 0; i < 400; i++) {
            tall.append("<line%04d>\n".formatted(i));
        }
        String text = PdfText.dense(draw(List.of(
                List.of(TableCell.bold("<before>"), TableCell.of("short")),
                List.of(TableCell.bold("<tall>"), TableCell.of(tall.toString())),
                List.of(TableCell.bold("<after>"), TableCell.of("short")))));
        for (int i = 0; i < 400; i++) {
            assertEquals(1, PdfText.count(text, "<line%04d>".formatted(i)), "line " + i);
        }
        assertEquals(1, PdfText.count(text, "<after>"));
    }

    @Test
    void headIsRepeatedOnEveryPage() throws IOException {
        List<List<TableCell>> rows = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            rows.add(List.of(TableCell.bold("x"), TableCell.of("y")));
        }
        byte[] pdf = draw(rows);
        String text = PdfText.dense(pdf);
        try (var document = org.apache.pdfbox.Loader.loadPDF(pdf)) {
            assertTrue(document.getNumberOfPages() > 3);
            assertEquals(document.getNumberOfPages(), PdfText.count(text, "Keyhead"));
        }
    }

    @Test
    void wordWiderThanItsColumnIsBrokenAndWhole() throws IOException {
        String word = "N".repeat(300) + "<end>";
        String text = PdfText.dense(draw(List.of(List.of(TableCell.bold("k"), TableCell.of(word)))));
        assertTrue(text.contains(word));
    }

    @Test
    void rowWithAMissingCellIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> draw(List.of(List.of(TableCell.bold("only one")))));
    }

    private static byte[] draw(List<List<TableCell>> rows) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Look look = new Look(new Typeface(), new Palette(), new ReadableNumbers('.'), PageFlow.textWidth(WIDTH));
        TaggedTable table =
                new TaggedTable(look, List.of(TableColumn.word("Key head"), TableColumn.text("Text")), rows);
        Document document = new Document(new Rectangle(WIDTH, 400), 0, 0, 0, 0);
        PdfWriter writer = PdfWriter.getInstance(document, out);
        writer.setTagged();
        document.open();
        PageFlow flow = new PageFlow(document, writer, look, "footer");
        flow.add(List.of(table));
        flow.finish();
        document.close();
        return out.toByteArray();
    }
}
