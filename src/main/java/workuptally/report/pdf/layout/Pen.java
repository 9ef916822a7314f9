package workuptally.report.pdf.layout;

import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Color;

/**
 * Texts, areas and lines on the pages of a flow. Colour, thickness and font stay in force until another is asked for, and are written
 * only then: said with every word they would be half of what a page has to be packed.
 */
public final class Pen {
    private static final float HATCH_STEP = 4;
    private static final float DOT_STEP = 3;
    private static final float DOT = 0.9f;
    private static final Color HATCH = new Color(0x333333);
    private static final float NONE = -1;

    private final PdfContentByte canvas;
    private final Typeface typeface;

    // in force on the page; none at its start
    private Color fill;
    private Color stroke;
    private float thickness;
    private BaseFont font;
    private float size;

    Pen(PdfContentByte canvas, Typeface typeface) {
        this.canvas = canvas;
        this.typeface = typeface;
        startPage();
    }

    /** To be called when the page was turned. */
    void startPage() {
        fill = null;
        stroke = null;
        thickness = NONE;
        font = null;
        size = NONE;
    }

    private void fill(Color colour) {
        if (!colour.equals(fill)) {
            canvas.setColorFill(colour);
            fill = colour;
        }
    }

    private void stroke(Color colour, float thick) {
        if (thick != thickness) {
            canvas.setLineWidth(thick);
            thickness = thick;
        }
        if (!colour.equals(stroke)) {
            canvas.setColorStroke(colour);
            stroke = colour;
        }
    }

    private void font(TextStyle style) {
        if (typeface.font(style) != font || style.size() != size) {
            font = typeface.font(style);
            size = style.size();
            canvas.setFontAndSize(font, size);
        }
    }

    void text(String line, float x, float baseline, TextStyle style) {
        if (line.isEmpty()) {
            return;
        }
        canvas.beginText();
        fill(style.colour());
        font(style);
        canvas.moveText(x, baseline);
        canvas.showText(line);
        canvas.endText();
    }

    public void area(float x, float y, float width, float height, Palette.Fill ground, Color outline) {
        plain(x, y, width, height, ground.ground());
        hatch(x, y, width, height, ground.hatch());
        frame(x, y, width, height, 0.5f, outline);
    }

    public void frame(float x, float y, float width, float height, float thick, Color colour) {
        stroke(colour, thick);
        canvas.rectangle(x, y, width, height);
        canvas.stroke();
    }

    public void plain(float x, float y, float width, float height, Color ground) {
        fill(ground);
        canvas.rectangle(x, y, width, height);
        canvas.fill();
    }

    public void line(float x1, float y1, float x2, float y2, float thick, Color colour) {
        stroke(colour, thick);
        canvas.moveTo(x1, y1);
        canvas.lineTo(x2, y2);
        canvas.stroke();
    }

    /** A line, dashed if asked. */
    public void dashed(float x1, float y1, float x2, float y2, float thick, boolean dashed, Color colour) {
        if (dashed) {
            canvas.setLineDash(3, 2, 0);
        }
        line(x1, y1, x2, y2, thick, colour);
        if (dashed) {
            canvas.setLineDash(0);
        }
    }

    /** A level line that changes over to another level in a curve, which ends it. */
    public void curve(float x1, float y1, float x2, float y2, float bend, float thick, Color colour) {
        stroke(colour, thick);
        canvas.moveTo(x1, y1);
        canvas.lineTo(x2 - 2 * bend, y1);
        canvas.curveTo(x2 - bend, y1, x2 - bend, y2, x2, y2);
        canvas.stroke();
    }

    public void dot(float x, float y, float radius, Color ground, Color outline) {
        fill(ground);
        stroke(outline, 0.9f);
        canvas.circle(x, y, radius);
        canvas.fillStroke();
    }

    private void hatch(float x, float y, float width, float height, Palette.Hatch hatch) {
        if (hatch == Palette.Hatch.NONE) {
            return;
        }
        if (hatch == Palette.Hatch.DOTTED) {
            dots(x, y, width, height);
            return;
        }
        Color strokeOutside = stroke;
        float thicknessOutside = thickness;
        canvas.saveState();
        canvas.rectangle(x, y, width, height);
        canvas.clip();
        canvas.newPath();
        stroke(HATCH, 0.4f);
        for (float at = x - height; at < x + width; at += HATCH_STEP) {
            if (hatch != Palette.Hatch.FALLING) {
                canvas.moveTo(at, y);
                canvas.lineTo(at + height, y + height);
            }
            if (hatch != Palette.Hatch.RISING) {
                canvas.moveTo(at, y + height);
                canvas.lineTo(at + height, y);
            }
        }
        canvas.stroke();
        canvas.restoreState();
        stroke = strokeOutside;
        thickness = thicknessOutside;
    }

    /** Small squares on a raster, staggered by row, none over the edge. */
    private void dots(float x, float y, float width, float height) {
        if (width < 2.2f || height < 2.2f) {
            return;
        }
        fill(HATCH);
        int row = 0;
        for (float up = y + 1.2f; up + DOT <= y + height; up += DOT_STEP, row++) {
            for (float at = x + 1.2f + (row % 2) * DOT_STEP / 2; at + DOT <= x + width; at += DOT_STEP) {
                canvas.rectangle(at, up, DOT, DOT);
            }
        }
        canvas.fill();
    }
}
