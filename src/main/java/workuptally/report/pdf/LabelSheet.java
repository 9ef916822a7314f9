package workuptally.report.pdf;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import workuptally.judgement.RunReview;
import workuptally.judgement.hazards.HazardNote;
import workuptally.model.Charge;
import workuptally.model.Product;
import workuptally.tally.bench.Plan;

/** A label to cut out for each portion that a planned run will give: run, layer, contents, hazard words, date, owner. */
final class LabelSheet {
    /**
     * Statements that need not stand beside a graver one of the same kind: flammable liquids, burns and irritation. Source: Regulation (EC)
     * 1272/2008, Article 27, statements that plainly repeat another need not be shown.
     */
    private static final Map<String, Set<String>> SAID_BY = Map.of(
            "H224", Set.of("H225", "H226"),
            "H225", Set.of("H226"),
            "H314", Set.of("H315", "H318", "H319"),
            "H318", Set.of("H319"));

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
                        + "; may hold " + String.join(", ", othersOf(layer)),
                hazardWords(layer));
    }

    /** Products, and what may be left of what went in. */
    private List<String> mayHold() {
        Set<String> names = new LinkedHashSet<>();
        run.tally().run().products().stream().map(Product::name).forEach(names::add);
        run.tally().run().charges().stream()
                .filter(c -> c.role()
                        .filter(r -> r == Charge.Role.SUBSTRATE || r == Charge.Role.REAGENT)
                        .isPresent())
                .map(Charge::material)
                .forEach(names::add);
        return List.copyOf(names);
    }

    /** Those that are not named by what is expected already. */
    private List<String> othersOf(Plan.ExpectedLayer layer) {
        return mayHold().stream()
                .filter(name -> layer.substances().stream().noneMatch(part -> isSame(part, name)))
                .toList();
    }

    private String hazardWords(Plan.ExpectedLayer layer) {
        Map<String, String> phrases = new LinkedHashMap<>();
        List<String> parts = new ArrayList<>(layer.substances());
        parts.addAll(mayHold());
        for (String part : parts) {
            for (HazardNote note : run.hazards()) {
                if (isSame(note.subject(), part)) {
                    note.statements()
                            .forEach(s -> phrases.put(
                                    s.substring(0, end(s)), s.substring(end(s)).strip()));
                }
            }
        }
        phrases.keySet().removeAll(said(phrases.keySet()));
        return phrases.isEmpty()
                ? "Hazards: ______________________________"
                : String.join(" ", phrases.values()) + " More in the safety data sheets.";
    }

    /** A grade behind a comma may stand or not: {@code acetic acid, glacial}. */
    private static boolean isSame(String subject, String typed) {
        String name = typed.toLowerCase(Locale.ROOT);
        String plain = subject.toLowerCase(Locale.ROOT);
        return name.equals(plain) || name.startsWith(plain + ", ");
    }

    private static int end(String statement) {
        int space = statement.indexOf(' ');
        return space < 0 ? statement.length() : space;
    }

    /** Milder statements that a graver one on the label says already. */
    private static Set<String> said(Set<String> codes) {
        Set<String> said = new LinkedHashSet<>();
        SAID_BY.forEach((graver, milder) -> {
            if (codes.contains(graver)) {
                said.addAll(milder);
            }
        });
        return said;
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
