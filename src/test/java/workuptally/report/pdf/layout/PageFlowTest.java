package workuptally.report.pdf.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.Test;

/** Sections of a long document are written while it still goes on; the structure tree must be whole all the same. */
public class PageFlowTest {
    private static final int SECTIONS = 160;

    @Test
    void everySectionOfALongDocumentHangsInTheTreeInItsOrder() throws IOException {
        try (PDDocument document = Loader.loadPDF(longDocument())) {
            assertEquals(SECTIONS, document.getNumberOfPages());
            PDStructureElement whole = elements(document.getDocumentCatalog().getStructureTreeRoot())
                    .get(0);
            List<PDStructureElement> sections = elements(whole);
            assertEquals(
                    IntStream.range(0, SECTIONS)
                            .mapToObj(i -> i == 0 ? "Sect H1 Table" : "Sect H2 Table")
                            .toList(),
                    sections.stream()
                            .map(s -> s.getStructureType() + " "
                                    + String.join(
                                            " ",
                                            elements(s).stream()
                                                    .map(PDStructureElement::getStructureType)
                                                    .toList()))
                            .toList());
            for (int i = 0; i < SECTIONS; i++) {
                PDStructureElement heading = elements(sections.get(i)).get(0);
                assertSame(document.getPage(i).getCOSObject(), heading.getPage().getCOSObject());
                assertSame(sections.get(i).getCOSObject(), heading.getParent().getCOSObject());
                List<PDStructureElement> rows =
                        elements(elements(sections.get(i)).get(1));
                assertEquals(2, rows.size());
                assertEquals(2, elements(rows.get(1)).size());
            }
        }
    }

    /** A document of a page a section, with what a section of the review is made of. */
    public static byte[] longDocument() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfDocument("Many sections", "1", "nothing", Optional.empty(), "")
                .write(
                        new PdfOptions(PdfOptions.Paper.A4, PdfOptions.DecimalMark.POINT, Optional.empty()),
                        PageFlowTest::fill,
                        out);
        return out.toByteArray();
    }

    private static void fill(PageFlow flow) {
        Look look = flow.look();
        for (int i = 0; i < SECTIONS; i++) {
            if (i > 0) {
                flow.turn();
            }
            flow.openSection();
            flow.add(List.of(
                    new Heading(
                            look,
                            i == 0 ? Heading.Level.TITLE : Heading.Level.SECTION,
                            "Section " + i,
                            Optional.of("s" + i)),
                    new TaggedTable(
                            look,
                            List.of(TableColumn.word("Key"), TableColumn.text("Text")),
                            List.of(List.of(TableCell.bold("k" + i), TableCell.of("text"))))));
            flow.closeSection();
        }
    }

    private static List<PDStructureElement> elements(PDStructureNode node) {
        List<PDStructureElement> elements = new ArrayList<>();
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                elements.add(element);
            }
        }
        return elements;
    }
}
