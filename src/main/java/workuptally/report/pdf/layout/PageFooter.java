package workuptally.report.pdf.layout;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;

/** The foot of every page: where the document comes from, and the page of how many; the last number is filled in at the end. */
final class PageFooter {
    private static final int LINES = 2;
    private static final String WIDEST_TOTAL = "0000";

    private final Look look;
    private final PdfContentByte canvas;
    private final MeasuredText words;
    private final PdfTemplate total;

    PageFooter(Look look, PdfContentByte canvas, String words) {
        this.look = look;
        this.canvas = canvas;
        this.words = new MeasuredText(look.typeface(), words, look.chart());
        this.total = canvas.createTemplate(40, 12);
    }

    void draw(PageFlow flow, float baseline, int page) {
        TextStyle style = look.chart().in(look.palette().soft());
        flow.rule(
                flow.left(),
                baseline + 10,
                look.widthPoints(),
                0.4f,
                look.palette().rule());
        String number = "Page " + page + " of ";
        float numberX = flow.left() + look.widthPoints() - look.typeface().width(number + WIDEST_TOTAL, style);
        float y = baseline;
        for (String line : words.brief(numberX - flow.left() - 12, LINES)) {
            flow.text(line, flow.left(), y, style);
            y -= style.leading();
        }
        flow.text(number, numberX, baseline, style);
        canvas.addTemplate(total, numberX + look.typeface().width(number, style), baseline - 3);
    }

    /** Fills in the number of pages on all of them. */
    void finish(int pages) {
        TextStyle style = look.chart().in(look.palette().soft());
        total.beginText();
        total.setColorFill(style.colour());
        total.setFontAndSize(look.typeface().font(style), style.size());
        total.setTextMatrix(0, 3);
        total.showText(Integer.toString(pages));
        total.endText();
    }
}
