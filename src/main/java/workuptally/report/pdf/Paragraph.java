package workuptally.report.pdf;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;

/** Running text; breaks over pages between lines. */
final class Paragraph implements Block {
    private static final float BELOW = 2;

    private final TextStyle style;
    private final boolean leads;
    private final List<String> lines;

    Paragraph(Look look, String text) {
        this(look, text, look.body(), false);
    }

    Paragraph(Look look, String text, TextStyle style) {
        this(look, text, style, false);
    }

    private Paragraph(Look look, String text, TextStyle style, boolean leads) {
        this.leads = leads;
        this.style = style;
        this.lines = look.typeface().wrap(text, style, look.widthPoints());
    }

    /** A text that must stand on one page with what follows it. */
    static Paragraph lead(Look look, String text, TextStyle style) {
        return new Paragraph(look, text, style, true);
    }

    @Override
    public float height() {
        return lines.size() * style.leading() + BELOW;
    }

    @Override
    public float leastHeight() {
        return Math.min(lines.size(), 2) * style.leading() + BELOW;
    }

    @Override
    public boolean keepsWithNext() {
        return leads;
    }

    @Override
    public void draw(PageFlow flow) {
        PdfStructureElement element = flow.element(PdfName.P);
        flow.room(leastHeight());
        int from = 0;
        while (from < lines.size()) {
            int fitting = Math.max(1, (int) (flow.remaining() / style.leading()));
            List<String> part = lines.subList(from, Math.min(lines.size(), from + fitting));
            flow.tagged(element, () -> {
                float y = flow.cursor();
                for (String line : part) {
                    flow.text(line, flow.left(), y - style.rise(), style);
                    y -= style.leading();
                }
            });
            flow.move(part.size() * style.leading());
            from += part.size();
            if (from < lines.size()) {
                flow.turn();
            }
        }
        flow.move(Math.min(BELOW, flow.remaining()));
    }
}
