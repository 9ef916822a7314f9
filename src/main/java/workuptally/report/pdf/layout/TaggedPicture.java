package workuptally.report.pdf.layout;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;

/** A picture in the flow, tagged with its alternative text. */
public final class TaggedPicture implements Block {
    private static final float BELOW = 4;

    private final Look look;
    private final Picture picture;

    public TaggedPicture(Look look, Picture picture) {
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
        float top = flow.cursor();
        Rectangle area = new Rectangle(flow.left(), top - picture.height(), flow.left() + look.widthPoints(), top);
        PdfStructureElement element = element(look, flow.section(), picture.alternative(), area);
        flow.tagged(element, () -> picture.draw(flow, flow.left(), top));
        flow.move(height());
    }

    /** A structure element for a picture, with what stands for it and the area it takes. */
    public static PdfStructureElement element(
            Look look, PdfStructureElement parent, String alternative, Rectangle area) {
        PdfStructureElement element = new PdfStructureElement(parent, new PdfName("Figure"));
        element.put(new PdfName("Alt"), new PdfString(look.typeface().line(alternative), PdfObject.TEXT_UNICODE));
        PdfDictionary attributes = new PdfDictionary();
        attributes.put(PdfName.O, new PdfName("Layout"));
        attributes.put(
                PdfName.BBOX,
                new PdfArray(new float[] {area.getLeft(), area.getBottom(), area.getRight(), area.getTop()}));
        element.put(PdfName.A, new PdfArray(attributes));
        return element;
    }
}
