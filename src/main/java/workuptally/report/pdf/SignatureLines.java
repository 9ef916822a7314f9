package workuptally.report.pdf;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.List;

/** A line to sign on for each reviewer, with name and date. */
final class SignatureLines implements Block {
    private static final float ROW = 30;
    private static final float BETWEEN = 24;

    private final Look look;
    private final List<String> names;
    private final int perRow;

    SignatureLines(Look look, List<String> names) {
        this.look = look;
        this.names = List.copyOf(names);
        this.perRow = names.size() == 3 ? 3 : 2;
    }

    @Override
    public float height() {
        return (names.size() + perRow - 1) / perRow * ROW;
    }

    @Override
    public float leastHeight() {
        return ROW;
    }

    @Override
    public void draw(PageFlow flow) {
        float width = (look.widthPoints() - BETWEEN * (perRow - 1)) / perRow;
        for (int from = 0; from < names.size(); from += perRow) {
            flow.room(ROW);
            for (int i = from; i < Math.min(names.size(), from + perRow); i++) {
                drawLine(flow, names.get(i), flow.left() + (i - from) * (width + BETWEEN), width);
            }
            flow.move(ROW);
        }
    }

    private void drawLine(PageFlow flow, String name, float x, float width) {
        float y = flow.cursor() - ROW + 12;
        flow.artifact(() -> flow.rule(x, y, width, 0.6f, look.palette().strongRule()));
        PdfStructureElement element = flow.element(PdfName.P);
        String text = look.typeface().fit("Reviewed by " + name, look.caption(), width - 80);
        flow.tagged(element, () -> {
            flow.text(text, x, y - 9, look.caption());
            flow.text("Date", x + width - 60, y - 9, look.caption());
        });
    }
}
