package workuptally.report.pdf.pictures;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.TaggedPicture;

/** A balance: its figures in a sentence on the left, its bar on the right. */
public final class ClosureRow implements Block {
    private static final float TEXT_SHARE = 0.42f;
    private static final float BETWEEN = 12;
    private static final float BELOW = 4;

    private final Look look;
    private final List<String> lines;
    private final BalanceBar bar;

    /**
     * A row.
     *
     * @param text the figures in words
     * @param bar the bar; as wide as {@link #barWidth}
     */
    public ClosureRow(Look look, String text, BalanceBar bar) {
        this.look = look;
        this.lines = look.typeface().wrap(text, look.body(), textWidth(look));
        this.bar = bar;
    }

    private static float textWidth(Look look) {
        return look.widthPoints() * TEXT_SHARE;
    }

    /** Width of the bar, points. */
    static float barWidth(Look look) {
        return look.widthPoints() - textWidth(look) - BETWEEN;
    }

    @Override
    public float height() {
        return Math.max(lines.size() * look.body().leading(), bar.height()) + BELOW;
    }

    @Override
    public void draw(PageFlow flow) {
        flow.room(height());
        float top = flow.cursor();
        PdfStructureElement text = flow.element(PdfName.P);
        flow.tagged(text, () -> {
            float y = top;
            for (String line : lines) {
                flow.text(line, flow.left(), y - look.body().rise(), look.body());
                y -= look.body().leading();
            }
        });
        float left = flow.left() + textWidth(look) + BETWEEN;
        Rectangle area = new Rectangle(left, top - bar.height(), left + barWidth(look), top);
        PdfStructureElement figure = TaggedPicture.element(look, flow.section(), bar.alternative(), area);
        flow.tagged(figure, () -> bar.draw(flow, left, top - 1));
        flow.move(height());
    }
}
