package workuptally.report.pdf.layout;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;

/** A line to sign on for each reviewer, with name and date. */
public final class SignatureLines implements Block {
    private static final float SPACE_TO_SIGN = 15;
    private static final float BETWEEN = 18;
    private static final float DATE_WIDTH = 46;

    private final Look look;
    private final int perRow;
    private final float width;
    private final List<List<String>> names = new ArrayList<>();

    public SignatureLines(Look look, List<String> names) {
        this.look = look;
        this.perRow = names.size() == 3 ? 3 : 2;
        this.width = (look.widthPoints() - BETWEEN * (perRow - 1)) / perRow;
        for (String name : names) {
            this.names.add(look.typeface().wrap(name, look.caption(), width - DATE_WIDTH - 6));
        }
    }

    private float rowHeight(int from) {
        int lines = 1;
        for (int i = from; i < Math.min(names.size(), from + perRow); i++) {
            lines = Math.max(lines, names.get(i).size());
        }
        return SPACE_TO_SIGN + lines * look.caption().leading() + 2;
    }

    @Override
    public float height() {
        float height = 0;
        for (int from = 0; from < names.size(); from += perRow) {
            height += rowHeight(from);
        }
        return height;
    }

    @Override
    public float leastHeight() {
        return rowHeight(0);
    }

    @Override
    public void draw(PageFlow flow) {
        for (int from = 0; from < names.size(); from += perRow) {
            flow.room(rowHeight(from));
            for (int i = from; i < Math.min(names.size(), from + perRow); i++) {
                drawLine(flow, names.get(i), flow.left() + (i - from) * (width + BETWEEN));
            }
            flow.move(rowHeight(from));
        }
    }

    private void drawLine(PageFlow flow, List<String> name, float x) {
        float line = flow.cursor() - SPACE_TO_SIGN;
        TextStyle style = look.caption();
        flow.artifact(() -> {
            flow.rule(x, line, width - DATE_WIDTH - 6, 0.6f, look.palette().strongRule());
            flow.rule(
                    x + width - DATE_WIDTH,
                    line,
                    DATE_WIDTH,
                    0.6f,
                    look.palette().strongRule());
        });
        PdfStructureElement element = flow.element(PdfName.P);
        flow.tagged(element, () -> {
            float y = line - 1;
            for (String part : name) {
                flow.text(part, x, y - style.rise(), style);
                y -= style.leading();
            }
            flow.text("date", x + width - DATE_WIDTH, line - 1 - style.rise(), style);
        });
    }
}
