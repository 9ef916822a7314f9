package workuptally.report.pdf.layout;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.List;

/** Labels to cut out, two side by side; the words of the bench are filled in by hand where the record has none. */
public final class LabelGrid {
    private LabelGrid() {}

    /** Rows of two labels. */
    public static List<Block> of(Look look, List<Label> labels) {
        List<Block> rows = new ArrayList<>();
        for (int i = 0; i < labels.size(); i += 2) {
            rows.add(new Pair(look, labels.subList(i, Math.min(labels.size(), i + 2))));
        }
        return rows;
    }

    /**
     * What stands on a label.
     *
     * @param name run and layer, or container
     * @param contents phase and contents
     * @param hazards hazard words, or a line to write them on
     * @param made day and pH, as recorded or as lines to fill in
     * @param owner owner and phone
     */
    public record Label(String name, String contents, String hazards, String made, String owner) {}

    /** Two labels side by side. */
    private static final class Pair implements Block {
        private static final float BETWEEN = 12;
        private static final float PAD = 7;
        private static final float LINE_TO_FILL = 17;
        private static final float BELOW = 10;

        private final Look look;
        private final List<Label> labels;
        private final float width;

        Pair(Look look, List<Label> labels) {
            this.look = look;
            this.labels = List.copyOf(labels);
            this.width = (look.widthPoints() - BETWEEN) / 2;
        }

        private List<String> wrap(String text, TextStyle style) {
            return look.typeface().wrap(text, style, width - 2 * PAD);
        }

        private TextStyle name() {
            return look.section();
        }

        private TextStyle text() {
            return look.table();
        }

        private TextStyle hazards() {
            return look.table().inBold();
        }

        private float height(Label label) {
            return 2 * PAD
                    + wrap(label.name(), name()).size() * name().leading()
                    + wrap(label.contents(), text()).size() * text().leading()
                    + wrap(label.hazards(), hazards()).size() * hazards().leading()
                    + lineToFill(label.made())
                    + lineToFill(label.owner());
        }

        /** The first line has room to write on; further ones of a long producer or place follow below it. */
        private float lineToFill(String text) {
            return LINE_TO_FILL + (wrap(text, text()).size() - 1) * text().leading();
        }

        private float frameHeight() {
            return (float) labels.stream().mapToDouble(this::height).max().orElse(0);
        }

        @Override
        public float height() {
            return frameHeight() + BELOW;
        }

        @Override
        public void draw(PageFlow flow) {
            flow.room(height());
            for (int i = 0; i < labels.size(); i++) {
                draw(flow, labels.get(i), flow.left() + i * (width + BETWEEN));
            }
            flow.move(Math.min(height(), flow.remaining()));
        }

        private void draw(PageFlow flow, Label label, float x) {
            float top = flow.cursor();
            flow.artifact(() -> flow.pen()
                    .frame(
                            x,
                            top - frameHeight(),
                            width,
                            frameHeight(),
                            0.8f,
                            look.palette().ink()));
            PdfStructureElement element = flow.element(PdfName.P);
            flow.tagged(element, () -> {
                float y = top - PAD;
                y = lines(flow, label.name(), name(), x, y);
                y = lines(flow, label.contents(), text(), x, y);
                y = lines(flow, label.hazards(), hazards(), x, y);
                y -= LINE_TO_FILL - text().leading();
                y = lines(flow, label.made(), text(), x, y);
                y -= LINE_TO_FILL - text().leading();
                lines(flow, label.owner(), text(), x, y);
            });
        }

        private float lines(PageFlow flow, String text, TextStyle style, float x, float from) {
            float y = from;
            for (String line : wrap(text, style)) {
                flow.text(line, x + PAD, y - style.rise(), style);
                y -= style.leading();
            }
            return y;
        }
    }
}
