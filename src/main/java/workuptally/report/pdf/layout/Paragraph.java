package workuptally.report.pdf.layout;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;
import java.util.Optional;

/** Running text; breaks over pages between lines. */
public final class Paragraph implements Block {
    private static final float BELOW = 2;

    private final TextStyle style;
    private final boolean leads;
    private final Optional<String> destination;
    private final List<String> lines;
    private final float width;

    public Paragraph(Look look, String text) {
        this(look, text, look.body(), false, Optional.empty());
    }

    public Paragraph(Look look, String text, TextStyle style) {
        this(look, text, style, false, Optional.empty());
    }

    private Paragraph(Look look, String text, TextStyle style, boolean leads, Optional<String> destination) {
        this.destination = destination;
        this.leads = leads;
        this.style = style;
        this.width = look.widthPoints();
        this.lines = look.typeface().wrap(text, style, look.widthPoints());
    }

    /** A text that must stand on one page with what follows it. */
    public static Paragraph lead(Look look, String text, TextStyle style) {
        return new Paragraph(look, text, style, true, Optional.empty());
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
            draw(flow, element, part);
            flow.move(part.size() * style.leading());
            from += part.size();
            if (from < lines.size()) {
                flow.turn();
            }
        }
        flow.move(Math.min(BELOW, flow.remaining()));
    }

    private void draw(PageFlow flow, PdfStructureElement element, List<String> part) {
        Runnable drawing = () -> {
            float y = flow.cursor();
            for (String line : part) {
                flow.text(line, flow.left(), y - style.rise(), style);
                y -= style.leading();
            }
        };
        if (destination.isEmpty()) {
            flow.tagged(element, drawing);
            return;
        }
        float top = flow.cursor();
        Rectangle area = new Rectangle(flow.left(), top - part.size() * style.leading(), flow.left() + width, top);
        flow.link(element, area, destination.get(), String.join(" ", part), drawing);
    }
}
