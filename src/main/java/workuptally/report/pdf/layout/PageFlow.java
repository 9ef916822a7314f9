package workuptally.report.pdf.layout;

import com.lowagie.text.Document;
import com.lowagie.text.ExceptionConverter;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfAction;
import com.lowagie.text.pdf.PdfAnnotation;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * Pages filled from top to bottom, with a structure tree beside what is seen.
 *
 * <p>Everything drawn belongs either to a structure element or is an artifact (rules, fills, footers, repeated header rows).
 */
public final class PageFlow {
    private static final PdfName ARTIFACT = new PdfName("Artifact");
    private static final float SIDE = 36;
    private static final float TOP = 34;
    private static final float BOTTOM = 46;

    private static final float LARGEST_GAP = 0.4f;

    /** From this page on, what a section holds is written as soon as it is closed: the tags of 20 000 runs take gigabytes. */
    private static final int PAGES_IN_MEMORY = 100;

    private final Document document;
    private final PdfWriter writer;
    private final PdfContentByte canvas;
    private final Look look;
    private final Pen pen;
    private final PageFooter footer;
    private final Deque<PdfStructureElement> open = new ArrayDeque<>();
    private float y;
    private int pages = 1;

    PageFlow(Document document, PdfWriter writer, Look look, String footer) {
        this.document = document;
        this.writer = writer;
        this.canvas = writer.getDirectContent();
        this.look = look;
        this.pen = new Pen(canvas, look.typeface());
        this.footer = new PageFooter(look, canvas, footer);
        open.push(new PdfStructureElement(writer.getStructureTreeRoot(), PdfName.DOCUMENT));
        y = top();
    }

    /** Width of the text area on a page of that width. */
    static float textWidth(float pageWidthPoints) {
        return pageWidthPoints - 2 * SIDE;
    }

    public Look look() {
        return look;
    }

    public Pen pen() {
        return pen;
    }

    public float left() {
        return SIDE;
    }

    public float cursor() {
        return y;
    }

    public float remaining() {
        return y - BOTTOM;
    }

    public float fullHeight() {
        return top() - BOTTOM;
    }

    public boolean atTop() {
        return y >= top() - 0.01f;
    }

    private float top() {
        return document.getPageSize().getHeight() - TOP;
    }

    public void move(float down) {
        y -= down;
    }

    /** Turns the page unless that much room is left; a height above a whole page is never waited for. */
    public void room(float height) {
        if (height > remaining() + 0.01f && !atTop()) {
            turn();
        }
    }

    public void turn() {
        drawFooter();
        document.newPage();
        pen.startPage();
        pages++;
        y = top();
    }

    /** Adds blocks one after the other; a heading goes with what follows it. */
    public void add(List<Block> blocks) {
        for (int i = 0; i < blocks.size(); i++) {
            if (blocks.get(i).keepsWithNext()) {
                room(Math.min(headHeight(blocks, i), fullHeight()));
            }
            blocks.get(i).draw(this);
        }
    }

    private static float headHeight(List<Block> blocks, int from) {
        float height = 0;
        for (int i = from; i < blocks.size(); i++) {
            if (!blocks.get(i).keepsWithNext()) {
                return height + blocks.get(i).leastHeight();
            }
            height += blocks.get(i).height();
        }
        return height;
    }

    /** Adds blocks that belong together: on this page if it holds them or a good part of it is free, else on a new one. */
    public void addTogether(List<Block> blocks) {
        float height = 0;
        for (Block block : blocks) {
            height += block.height();
        }
        if (height > remaining() && remaining() < fullHeight() * LARGEST_GAP) {
            turn();
        }
        add(blocks);
    }

    /** Adds blocks that are read and signed as one: all on one page wherever a page can hold them. */
    public void addWhole(List<Block> blocks) {
        float height = 0;
        for (Block block : blocks) {
            height += block.height();
        }
        if (height <= fullHeight()) {
            room(height);
        }
        add(blocks);
    }

    /** A new element inside the section that is open. */
    public PdfStructureElement element(PdfName role) {
        return new PdfStructureElement(open.peek(), role);
    }

    /** The section that is open. */
    public PdfStructureElement section() {
        return open.peek();
    }

    public void openSection() {
        open.push(element(new PdfName("Sect")));
    }

    /** Closes the section that is open; nothing can be added to it or to what it holds any more. */
    public void closeSection() {
        PdfStructureElement section = open.pop();
        if (pages > PAGES_IN_MEMORY) {
            PdfArray beside = (PdfArray) open.peek().get(PdfName.K);
            try {
                write(section);
            } catch (IOException unwritable) {
                throw new ExceptionConverter(unwritable);
            }
            beside.set(beside.size() - 1, section.getReference());
        }
    }

    /** Writes an element with all that it holds; the library then needs no more of it than its number. */
    private void write(PdfStructureElement element) throws IOException {
        if (element.get(PdfName.K) instanceof PdfArray kids) {
            for (int i = 0; i < kids.size(); i++) {
                if (kids.getPdfObject(i) instanceof PdfStructureElement kid) {
                    write(kid);
                    kids.set(i, kid.getReference());
                }
            }
        }
        writer.addToBody(element, element.getReference());
    }

    /** Draws content that belongs to an element. */
    public void tagged(PdfStructureElement element, Runnable drawing) {
        canvas.beginMarkedContentSequence(element);
        drawing.run();
        canvas.endMarkedContentSequence();
    }

    /** Draws what carries no meaning of its own. */
    void artifact(Runnable drawing) {
        canvas.beginMarkedContentSequence(ARTIFACT);
        drawing.run();
        canvas.endMarkedContentSequence();
    }

    /** Draws content that leads to a named place of the document. */
    void link(PdfStructureElement parent, Rectangle area, String destination, String meaning, Runnable drawing) {
        PdfStructureElement element = new PdfStructureElement(parent, PdfName.LINK);
        tagged(element, drawing);
        PdfAnnotation annotation = new PdfAnnotation(
                writer,
                area.getLeft(),
                area.getBottom(),
                area.getRight(),
                area.getTop(),
                PdfAction.gotoLocalPage(destination, false));
        annotation.put(PdfName.BORDER, new PdfArray(new float[] {0, 0, 0}));
        annotation.put(PdfName.CONTENTS, new PdfString(meaning, PdfObject.TEXT_UNICODE));
        annotation.setFlags(PdfAnnotation.FLAGS_PRINT);
        annotation.put(
                new PdfName("StructParent"),
                new PdfNumber(writer.getStructureTreeRoot().addExistingObject(element.getReference())));
        PdfDictionary object = new PdfDictionary(new PdfName("OBJR"));
        object.put(new PdfName("Obj"), annotation.getIndirectReference());
        object.put(PdfName.PG, writer.getCurrentPage());
        PdfArray kids = new PdfArray(element.get(PdfName.K));
        kids.add(object);
        element.put(PdfName.K, kids);
        writer.addAnnotation(annotation);
    }

    /** Names the place of the cursor and, if wanted, adds a bookmark to it. */
    public void mark(String destination, String title, boolean bookmark) {
        PdfDestination here = new PdfDestination(PdfDestination.XYZ, 0, Math.min(y + 8, top() + 8), 0);
        canvas.localDestination(destination, here);
        if (bookmark) {
            new PdfOutline(
                    canvas.getRootOutline(),
                    new PdfDestination(PdfDestination.XYZ, 0, Math.min(y + 8, top() + 8), 0),
                    title.replaceAll("\\p{Cntrl}", " "),
                    false);
        }
    }

    public void text(String line, float x, float baseline, TextStyle style) {
        pen.text(line, x, baseline, style);
    }

    void rule(float x, float atY, float width, float thickness, Color colour) {
        pen.line(x, atY, x + width, atY, thickness, colour);
    }

    /** Ends the last page and fills in the number of pages. */
    void finish() {
        drawFooter();
        footer.finish(pages);
    }

    private void drawFooter() {
        artifact(() -> footer.draw(this, BOTTOM - 20, pages));
    }
}
