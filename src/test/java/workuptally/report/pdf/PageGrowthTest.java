package workuptally.report.pdf;

import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Paragraph;
import workuptally.report.pdf.layout.PdfDocument;
import workuptally.report.pdf.layout.PdfOptions;
import workuptally.speed.Growth;

/** Pages with next to nothing on them, so many that even a short look at all of them, done for each, shows. */
@Tag("slow")
class PageGrowthTest {
    private static final double MOST_TIME = 1.6;
    private static final int FEW = 3_000;
    private static final int MANY = 10 * FEW;

    @Test
    void noPageTakesALookAtAllOthers() throws Exception {
        new Growth<>(MOST_TIME, new Growth.Sized<>(1, 1), new Growth.Sized<>(FEW, FEW), new Growth.Sized<>(MANY, MANY))
                .assertLinear("pages", PageGrowthTest::pages);
    }

    private static void pages(int count) throws Exception {
        PdfDocument document = new PdfDocument("Pages", "growth", "nothing", Optional.empty(), "");
        PdfOptions options = new PdfOptions(PdfOptions.Paper.A4, PdfOptions.DecimalMark.POINT, Optional.empty());
        document.write(options, flow -> fill(flow, count), OutputStream.nullOutputStream());
    }

    /** Each page a section with a place that links lead to, a bookmark, and a word. */
    private static void fill(PageFlow flow, int count) {
        for (int i = 0; i < count; i++) {
            if (i > 0) {
                flow.turn();
            }
            flow.openSection();
            flow.mark("page-" + i, "Page", true);
            flow.add(List.of(new Paragraph(flow.look(), "Page.")));
            flow.closeSection();
        }
    }
}
