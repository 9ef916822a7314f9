package workuptally.report.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Color;

/** Areas and lines of charts. */
final class Pen {
    private static final float HATCH_STEP = 4;

    private final PdfContentByte canvas;

    Pen(PdfContentByte canvas) {
        this.canvas = canvas;
    }

    void area(float x, float y, float width, float height, Palette.Fill fill, Color outline) {
        canvas.setColorFill(fill.ground());
        canvas.rectangle(x, y, width, height);
        canvas.fill();
        hatch(x, y, width, height, fill.hatch());
        canvas.setColorStroke(outline);
        canvas.setLineWidth(0.5f);
        canvas.rectangle(x, y, width, height);
        canvas.stroke();
    }

    void frame(float x, float y, float width, float height, float thickness, Color colour) {
        canvas.setColorStroke(colour);
        canvas.setLineWidth(thickness);
        canvas.rectangle(x, y, width, height);
        canvas.stroke();
    }

    void plain(float x, float y, float width, float height, Color ground) {
        canvas.setColorFill(ground);
        canvas.rectangle(x, y, width, height);
        canvas.fill();
    }

    void line(float x1, float y1, float x2, float y2, float thickness, Color colour) {
        canvas.setColorStroke(colour);
        canvas.setLineWidth(thickness);
        canvas.moveTo(x1, y1);
        canvas.lineTo(x2, y2);
        canvas.stroke();
    }

    /** A line, dashed if asked. */
    void dashed(float x1, float y1, float x2, float y2, float thickness, boolean dashed, Color colour) {
        canvas.saveState();
        if (dashed) {
            canvas.setLineDash(3, 2, 0);
        }
        line(x1, y1, x2, y2, thickness, colour);
        canvas.restoreState();
    }

    void dot(float x, float y, float radius, Color fill, Color outline) {
        canvas.setColorFill(fill);
        canvas.setColorStroke(outline);
        canvas.setLineWidth(0.9f);
        canvas.circle(x, y, radius);
        canvas.fillStroke();
    }

    private void hatch(float x, float y, float width, float height, Palette.Hatch hatch) {
        if (hatch == Palette.Hatch.NONE) {
            return;
        }
        canvas.saveState();
        canvas.rectangle(x, y, width, height);
        canvas.clip();
        canvas.newPath();
        canvas.setColorStroke(new Color(0x333333));
        canvas.setLineWidth(0.4f);
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
    }
}
