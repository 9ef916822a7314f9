package workuptally.report.pdf.pictures;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.TextStyle;
import workuptally.report.pdf.layout.Typeface;

/** Notes set in up to three columns of small type, each led by its subject in bold; read down the left column first. */
public final class HazardColumns implements Block {
    private static final int MOST_COLUMNS = 3;
    private static final float BETWEEN = 14;
    private static final float BELOW_ITEM = 2;
    private static final float SPACE = 5;
    private static final float MOST_TAKEN = 0.7f;
    private static final float BELOW = 3;

    private final TextStyle bold;
    private final TextStyle plain;
    private final int columnCount;
    private final float columnWidth;
    private final List<Item> items = new ArrayList<>();

    /**
     * Lays notes out.
     *
     * @param subjects subject of each note
     * @param texts its text; as many as there are subjects
     */
    public HazardColumns(Look look, List<String> subjects, List<String> texts) {
        this.plain = look.caption().in(look.palette().ink());
        this.bold = plain.inBold();
        this.columnCount = Math.max(1, Math.min(MOST_COLUMNS, subjects.size()));
        this.columnWidth = (look.widthPoints() - BETWEEN * (columnCount - 1)) / columnCount;
        for (int i = 0; i < subjects.size(); i++) {
            items.add(item(look.typeface(), subjects.get(i), texts.get(i)));
        }
    }

    /** The text begins behind its subject, where that leaves room for some words. */
    private Item item(Typeface typeface, String subject, String text) {
        List<String> lead = typeface.wrap(subject, bold, columnWidth);
        float taken = typeface.width(lead.get(lead.size() - 1), bold) + SPACE;
        if (taken > columnWidth * MOST_TAKEN) {
            return new Item(lead, 0, "", typeface.wrap(text, plain, columnWidth));
        }
        String first = typeface.wrap(text, plain, columnWidth - taken).get(0);
        String rest = typeface.line(text).strip().substring(first.length()).strip();
        return new Item(lead, taken, first, rest.isEmpty() ? List.of() : typeface.wrap(rest, plain, columnWidth));
    }

    private float height(Item item) {
        return (item.subject().size() + item.rest().size()) * plain.leading() + BELOW_ITEM;
    }

    /** Notes in their columns, filled one after the other to that height; the last column takes what is left. */
    private List<List<Item>> fill(List<Item> part, float height) {
        List<List<Item>> columns = new ArrayList<>();
        List<Item> column = new ArrayList<>();
        float filled = 0;
        for (Item item : part) {
            if (isFull(filled, item, height, columns.size() + 1)) {
                columns.add(column);
                column = new ArrayList<>();
                filled = 0;
            }
            column.add(item);
            filled += height(item);
        }
        columns.add(column);
        return columns;
    }

    /** Height of the tallest column of {@link #fill}. */
    private float tallest(List<Item> part, float height) {
        float tallest = 0;
        float filled = 0;
        int column = 1;
        for (Item item : part) {
            if (isFull(filled, item, height, column)) {
                column++;
                filled = 0;
            }
            filled += height(item);
            tallest = Math.max(tallest, filled);
        }
        return tallest;
    }

    /** True where a note goes into the next column, if there is one. */
    private boolean isFull(float filled, Item item, float height, int column) {
        return filled > 0 && filled + height(item) > height + 0.01f && column < columnCount;
    }

    /** The height to fill to, that of some run of notes, with which the columns are lowest together. */
    private float balance(List<Item> part) {
        float best = Float.MAX_VALUE;
        float lowest = tallest(part, best);
        for (int from = 0; from < part.size(); from++) {
            float height = 0;
            for (int to = from; to < part.size() && height < lowest; to++) {
                height += height(part.get(to));
                float tallest = tallest(part, height);
                if (tallest < lowest) {
                    best = height;
                    lowest = tallest;
                }
            }
        }
        return best;
    }

    /** Height that notes take in balanced columns. */
    private float lowest(List<Item> part) {
        return tallest(part, balance(part));
    }

    @Override
    public float height() {
        return lowest(items) + BELOW;
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
            while (fitting > 1 && lowest(open.subList(0, fitting)) > flow.remaining()) {
                fitting--;
            }
            List<Item> part = open.subList(0, fitting);
            float height = lowest(part);
            if (height > flow.remaining() && !flow.atTop()) {
                flow.turn();
                continue;
            }
            List<List<Item>> columns = fill(part, balance(part));
            for (int i = 0; i < columns.size(); i++) {
                draw(flow, columns.get(i), flow.left() + i * (columnWidth + BETWEEN));
            }
            flow.move(height);
            open = open.subList(fitting, open.size());
        }
        flow.move(Math.min(BELOW, flow.remaining()));
    }

    private void draw(PageFlow flow, List<Item> column, float x) {
        float y = flow.cursor();
        for (Item item : column) {
            PdfStructureElement element = flow.element(PdfName.P);
            float from = y;
            flow.tagged(element, () -> {
                float line = from;
                for (String text : item.subject()) {
                    flow.text(text, x, line - plain.rise(), bold);
                    line -= plain.leading();
                }
                flow.text(item.first(), x + item.taken(), line + plain.leading() - plain.rise(), plain);
                for (String text : item.rest()) {
                    flow.text(text, x, line - plain.rise(), plain);
                    line -= plain.leading();
                }
            });
            y -= height(item);
        }
    }

    /**
     * A note.
     *
     * @param subject lines of the subject
     * @param taken width that its last line takes
     * @param first text behind it on the same line
     * @param rest lines below
     */
    private record Item(List<String> subject, float taken, String first, List<String> rest) {}
}
