package workuptally.report.pdf;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;

/** Notes set in two columns of small type, each with its subject in bold; read down the left column first. */
final class HazardColumns implements Block {
    private static final float BETWEEN = 16;
    private static final float BELOW_ITEM = 2;
    private static final float BELOW = 3;

    private final TextStyle bold;
    private final TextStyle plain;
    private final float columnWidth;
    private final List<Item> items = new ArrayList<>();

    /**
     * Lays notes out.
     *
     * @param subjects subject of each note
     * @param texts its text; as many as there are subjects
     */
    HazardColumns(Look look, List<String> subjects, List<String> texts) {
        this.plain = look.caption().in(look.palette().ink());
        this.bold = plain.inBold();
        this.columnWidth = (look.widthPoints() - BETWEEN) / 2;
        for (int i = 0; i < subjects.size(); i++) {
            items.add(new Item(
                    look.typeface().wrap(subjects.get(i), bold, columnWidth),
                    look.typeface().wrap(texts.get(i), plain, columnWidth)));
        }
    }

    private float height(Item item) {
        return (item.subject().size() + item.text().size()) * plain.leading() + BELOW_ITEM;
    }

    private float height(List<Item> column) {
        float height = 0;
        for (Item item : column) {
            height += height(item);
        }
        return height;
    }

    /** Number of notes of the left column that makes the pair of columns lowest. */
    private int split(List<Item> part) {
        int best = part.size();
        float lowest = height(part);
        for (int left = 1; left < part.size(); left++) {
            float height = Math.max(height(part.subList(0, left)), height(part.subList(left, part.size())));
            if (height < lowest) {
                lowest = height;
                best = left;
            }
        }
        return best;
    }

    private float balanced(List<Item> part) {
        int left = split(part);
        return Math.max(height(part.subList(0, left)), height(part.subList(left, part.size())));
    }

    @Override
    public float height() {
        return balanced(items) + BELOW;
    }

    @Override
    public float leastHeight() {
        return Math.min(height(), height(items.get(0)) + BELOW);
    }

    @Override
    public void draw(PageFlow flow) {
        List<Item> open = items;
        while (!open.isEmpty()) {
            int fitting = open.size();
            while (fitting > 1 && balanced(open.subList(0, fitting)) > flow.remaining()) {
                fitting--;
            }
            if (balanced(open.subList(0, fitting)) > flow.remaining() && !flow.atTop()) {
                flow.turn();
                continue;
            }
            drawPart(flow, open.subList(0, fitting));
            open = open.subList(fitting, open.size());
        }
        flow.move(Math.min(BELOW, flow.remaining()));
    }

    private void drawPart(PageFlow flow, List<Item> part) {
        int left = split(part);
        float top = flow.cursor();
        drawColumn(flow, part.subList(0, left), flow.left(), top);
        drawColumn(flow, part.subList(left, part.size()), flow.left() + columnWidth + BETWEEN, top);
        flow.move(balanced(part));
    }

    private void drawColumn(PageFlow flow, List<Item> column, float x, float top) {
        float y = top;
        for (Item item : column) {
            PdfStructureElement element = flow.element(PdfName.P);
            float from = y;
            flow.tagged(element, () -> {
                float line = from;
                for (String text : item.subject()) {
                    flow.text(text, x, line - plain.rise(), bold);
                    line -= plain.leading();
                }
                for (String text : item.text()) {
                    flow.text(text, x, line - plain.rise(), plain);
                    line -= plain.leading();
                }
            });
            y -= height(item);
        }
    }

    private record Item(List<String> subject, List<String> text) {}
}
