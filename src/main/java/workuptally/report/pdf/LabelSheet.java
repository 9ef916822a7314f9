package workuptally.report.pdf;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.judgement.HazardNote;
import workuptally.judgement.RunReview;
import workuptally.model.Product;
import workuptally.tally.Plan;

/** A label to cut out for each portion that a planned run will give: run, layer, contents, hazard words, date, owner. */
final class LabelSheet {
    private final Look look;
    private final RunReview run;

    LabelSheet(Look look, RunReview run) {
        this.look = look;
        this.run = run;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(look.heading("Labels for " + run.id()));
        blocks.add(new Paragraph(
                look,
                "Contents and hazard words follow from the plan and the reference data; compare with the safety data sheets and the"
                        + " local label rules before use.",
                look.caption()));
        List<Plan.ExpectedLayer> layers = run.tally().plan().map(Plan::layers).orElse(List.of());
        for (int i = 0; i < layers.size(); i += 2) {
            blocks.add(new Pair(
                    look,
                    layers.subList(i, Math.min(layers.size(), i + 2)).stream()
                            .map(this::label)
                            .toList()));
        }
        return blocks;
    }

    private Label label(Plan.ExpectedLayer layer) {
        return new Label(
                run.id() + "  " + layer.label(),
                layer.phase().map(p -> p.word()).orElse("phase: ________") + "; expected: " + PlanBlocks.contents(layer)
                        + "; may hold " + products(),
                hazardWords(layer));
    }

    private String products() {
        return run.tally().run().products().stream().map(Product::name).collect(Collectors.joining(", "));
    }

    private String hazardWords(Plan.ExpectedLayer layer) {
        Set<String> words = new LinkedHashSet<>();
        for (String part : layer.grams().keySet()) {
            for (HazardNote note : run.hazards()) {
                if (note.subject().toLowerCase(Locale.ROOT).equals(part.toLowerCase(Locale.ROOT))) {
                    note.statements().forEach(s -> words.add(s.replaceFirst("^[A-Z]+\\d+\\S*( ?\\+ ?H\\d+)* ", "")));
                }
            }
        }
        return words.isEmpty()
                ? "Hazards: ______________________________"
                : String.join(" ", words) + " More in the safety data sheets.";
    }

    /**
     * What stands on a label.
     *
     * @param name run and layer
     * @param contents phase and contents
     * @param hazards hazard words, or a line to write them on
     */
    private record Label(String name, String contents, String hazards) {}

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
            this.labels = labels;
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
                    + 2 * LINE_TO_FILL;
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
            flow.artifact(() -> new Pen(flow.canvas())
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
                y = lines(flow, "Made on: ________________    pH: ________", text(), x, y);
                y -= LINE_TO_FILL - text().leading();
                lines(flow, "Owner: ________________    Phone: ________________", text(), x, y);
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
