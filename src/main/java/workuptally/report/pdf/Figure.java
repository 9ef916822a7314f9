package workuptally.report.pdf;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;

/** A picture in the flow, tagged with its alternative text. */
final class Figure implements Block {
    private static final float BELOW = 4;

    private final Look look;
    private final Picture picture;

    Figure(Look look, Picture picture) {
        this.look = look;
        this.picture = picture;
    }

    @Override
    public float height() {
        return picture.height() + BELOW;
    }

    @Override
    public void draw(PageFlow flow) {
        flow.room(height());
        PdfStructureElement element = flow.element(new PdfName("Figure"));
        element.put(
                new PdfName("Alt"), new PdfString(look.typeface().line(picture.alternative()), PdfObject.TEXT_UNICODE));
        PdfDictionary attributes = new PdfDictionary();
        attributes.put(PdfName.O, new PdfName("Layout"));
        attributes.put(new PdfName("Placement"), new PdfName("Block"));
        float top = flow.cursor();
        attributes.put(
                PdfName.BBOX,
                new PdfArray(new float[] {flow.left(), top - picture.height(), flow.left() + look.widthPoints(), top}));
        element.put(PdfName.A, new PdfArray(attributes));
        flow.tagged(element, () -> picture.draw(flow, flow.left(), top));
        flow.move(height());
    }
}
