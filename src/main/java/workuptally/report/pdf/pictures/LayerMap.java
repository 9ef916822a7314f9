package workuptally.report.pdf.pictures;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import workuptally.model.Step;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Palette;
import workuptally.report.pdf.layout.Pen;
import workuptally.report.pdf.layout.Picture;
import workuptally.report.pdf.layout.TextStyle;

/** The workup as a flow: a column per step, a lane per kind of phase, lines as wide as the share of the product they carry. */
final class LayerMap implements Picture {
    private static final Map<String, String> ABBREVIATED = Map.of(
            "concentrate", "conc.",
            "crystallise", "cryst.",
            "chromatograph", "chrom.",
            "back-extract", "back-extr.");

    private static final float HEAD = 34;
    private static final float TEXT_LINE = 8.8f;
    private static final float LANE_LABEL = 38;
    private static final float LEAST_COLUMN = 26;
    private static final float WIDEST_COLUMN = 74;
    private static final float WIDEST_OF_FURTHER = 42;
    private static final float ROW_GAP = 5;
    private static final float BOX = 12;
    private static final float WIDEST_LINE = 13;
    private static final float THINNEST_LINE = 0.5f;

    private final Look look;
    private final LayerMapGraph graph;
    private final TextStyle small;
    private final float columnWidth;
    private final List<String> caption;
    private final Map<String, Integer> slots = new HashMap<>();
    private final Map<MapNode.Lane, List<Float>> slotHeights = new EnumMap<>(MapNode.Lane.class);

    /** A map; its columns share the width of the text area as far as they need it. */
    private LayerMap(Look look, LayerMapGraph graph, String caption, float widestColumn) {
        this.look = look;
        this.graph = graph;
        this.caption = look.typeface().wrap(caption, look.caption(), look.widthPoints());
        this.small = look.chart();
        this.columnWidth = Math.min(
                widestColumn, (look.widthPoints() - LANE_LABEL) / (graph.steps().size() + 1));
        for (MapNode.Lane lane : MapNode.Lane.values()) {
            slotHeights.put(lane, assign(lane));
        }
    }

    /** The map of the product that leads: every step, with what the signs mean. */
    static LayerMap leading(Look look, LayerMapGraph graph, boolean planned) {
        boolean complete = graph.nodes().stream().anyMatch(MapNode::isComplete);
        return new LayerMap(
                look,
                graph,
                planned
                        ? "Where " + graph.product().name() + " is to go; thick frame: ends here."
                        : "Where " + graph.product().name() + " went: line width is its share, thick frame ends here"
                                + (complete ? ", " + MapNode.COMPLETE + " is the evidence" : "") + ".",
                WIDEST_COLUMN);
    }

    /** The map of a further product: only where it was found, drawn in the same way. */
    static LayerMap further(Look look, LayerMapGraph graph) {
        LayerMapGraph found = graph.onlyWhereFound();
        return new LayerMap(look, found, "Share of " + found.product().name(), WIDEST_OF_FURTHER);
    }

    /** Width that the map needs, at most that of the text area, points. */
    float width() {
        return Math.min(
                look.widthPoints(),
                Math.max(
                        LANE_LABEL + columnWidth * (graph.steps().size() + 1),
                        caption.stream()
                                .map(line -> look.typeface().width(line, look.caption()))
                                .max(Float::compare)
                                .orElse(0f)));
    }

    /** True where a page is wide enough for all steps and there is something to draw. */
    boolean fits() {
        return !graph.edges().isEmpty() && columnWidth >= LEAST_COLUMN;
    }

    /** Gives each portion a row of its lane that is free from its step to its last use; heights of the rows. */
    private List<Float> assign(MapNode.Lane lane) {
        List<Integer> freeFrom = new ArrayList<>();
        List<Float> heights = new ArrayList<>();
        for (MapNode node : graph.nodes()) {
            if (node.lane() != lane) {
                continue;
            }
            int slot = 0;
            while (slot < freeFrom.size() && freeFrom.get(slot) > node.column()) {
                slot++;
            }
            int free = Math.max(node.column() + 1, node.lastColumn());
            float height = BOX + ROW_GAP + TEXT_LINE * below(node).size();
            if (slot == freeFrom.size()) {
                freeFrom.add(free);
                heights.add(height);
            } else {
                freeFrom.set(slot, free);
                heights.set(slot, Math.max(heights.get(slot), height));
            }
            slots.put(node.label(), slot);
        }
        return heights;
    }

    private float height(MapNode.Lane lane) {
        float height = 0;
        for (float slot : slotHeights.get(lane)) {
            height += slot;
        }
        return height;
    }

    /** Caption, number and operation of each step. */
    private float head() {
        return HEAD + (caption.size() - 1) * look.caption().leading();
    }

    @Override
    public float height() {
        float height = head() + 2;
        for (MapNode.Lane lane : MapNode.Lane.values()) {
            height += height(lane);
        }
        return height;
    }

    @Override
    public String alternative() {
        StringJoiner text =
                new StringJoiner("; ", "Layer map for " + graph.product().name() + ". ", ".");
        for (Step step : graph.steps()) {
            text.add("step " + step.number() + " " + operation(step) + ": " + String.join(" + ", step.from())
                    + " gives " + String.join(" + ", step.gives()));
        }
        for (MapNode node : graph.nodes()) {
            if (node.sharePercent().isPresent()) {
                text.add(node.label() + " " + share(node) + (node.words().isEmpty() ? "" : ", " + node.words()));
            }
        }
        return text.toString();
    }

    /** An operation whose word is wider than its column by the usual abbreviation. */
    private String inShort(String operation, TextStyle style) {
        boolean fits = look.typeface().width(look.typeface().line(operation), style) <= columnWidth - 2;
        return fits ? operation : ABBREVIATED.getOrDefault(operation, operation);
    }

    private static String operation(Step step) {
        return step.operation().map(Step.Operation::word).orElse("step");
    }

    private String share(MapNode node) {
        return node.sharePercent().isPresent()
                ? look.figures().significant(node.sharePercent().getAsDouble(), 2) + "\u00A0%"
                : "";
    }

    @Override
    public void draw(PageFlow flow, float left, float top) {
        Pen pen = flow.pen();
        head(flow, left, top);
        lanes(flow, pen, left, top - head());
        Map<String, MapNode> nodes = new HashMap<>();
        graph.nodes().forEach(n -> nodes.put(n.label(), n));
        // widest first, so that thin lines stay visible over them
        List<LayerMapGraph.Edge> edges = new ArrayList<>(graph.edges());
        edges.sort(Comparator.comparingDouble((LayerMapGraph.Edge e) -> graph.drawnPercent(e.to()))
                .reversed());
        for (LayerMapGraph.Edge edge : edges) {
            line(pen, nodes.get(edge.from()), nodes.get(edge.to()), left, top);
        }
        graph.nodes().forEach(n -> box(flow, pen, n, left, top));
    }

    private void head(PageFlow flow, float left, float top) {
        float line = top - look.caption().rise();
        for (String words : caption) {
            flow.text(words, left, line, look.caption());
            line -= look.caption().leading();
        }
        TextStyle soft = small.in(look.palette().soft());
        for (int i = 0; i < graph.steps().size(); i++) {
            Step step = graph.steps().get(i);
            float y = top - head() + HEAD - 20;
            for (String text : List.of(step.number(), inShort(operation(step), soft))) {
                String word = look.typeface().fit(text, soft, columnWidth - 2);
                flow.text(word, x(left, i + 1) - look.typeface().width(word, soft) / 2, y, soft);
                y -= soft.leading();
            }
        }
    }

    private void lanes(PageFlow flow, Pen pen, float left, float below) {
        float top = below;
        for (MapNode.Lane lane : MapNode.Lane.values()) {
            if (!slotHeights.get(lane).isEmpty()) {
                float right = x(left, graph.steps().size()) + columnWidth / 2;
                pen.line(left, top, right, top, 0.3f, look.palette().rule());
                flow.text(lane.word(), left, top - 9, small.in(look.palette().soft()));
            }
            top -= height(lane);
        }
    }

    private float x(float left, int column) {
        return left + LANE_LABEL + columnWidth * (column + 0.5f);
    }

    private float y(float top, MapNode node) {
        float y = top - head();
        for (MapNode.Lane lane : MapNode.Lane.values()) {
            if (lane == node.lane()) {
                break;
            }
            y -= height(lane);
        }
        for (int slot = 0; slot < slots.get(node.label()); slot++) {
            y -= slotHeights.get(node.lane()).get(slot);
        }
        return y - 2 - BOX / 2 - 1;
    }

    private void line(Pen pen, MapNode from, MapNode to, float left, float top) {
        double percent = Math.max(0, Math.min(100, graph.drawnPercent(to.label())));
        float width = (float) Math.max(THINNEST_LINE, WIDEST_LINE * percent / 100);
        float startX = x(left, from.column());
        float endX = x(left, to.column());
        float bend = Math.min(columnWidth, (endX - startX)) / 2;
        pen.curve(startX, y(top, from), endX, y(top, to), bend, width, flow(to.lane()));
    }

    private void box(PageFlow flow, Pen pen, MapNode node, float left, float top) {
        TextStyle bold = small.inBold();
        String label = look.typeface().fitEnds(node.label(), bold, columnWidth - 8);
        float width = look.typeface().width(label, bold) + 6;
        float centre = x(left, node.column());
        float middle = y(top, node);
        pen.area(
                centre - width / 2,
                middle - BOX / 2,
                width,
                BOX,
                new Palette.Fill(Color.WHITE, Palette.Hatch.NONE, false),
                look.palette().ink());
        if (node.terminal()) {
            pen.frame(
                    centre - width / 2,
                    middle - BOX / 2,
                    width,
                    BOX,
                    1.3f,
                    look.palette().ink());
        }
        flow.text(label, centre - width / 2 + 3, middle - 2.7f, bold);
        float y = middle - BOX / 2 - 1;
        for (String text : below(node)) {
            float textWidth = look.typeface().width(text, small);
            pen.plain(centre - textWidth / 2 - 1, y - 8.4f, textWidth + 2, 8.4f, Color.WHITE);
            flow.text(text, centre - textWidth / 2, y - 7, small);
            y -= TEXT_LINE;
        }
    }

    /** Share and outcome under a box, on one line where that is wide enough. */
    private List<String> below(MapNode node) {
        String both = (share(node) + " " + node.words()).strip();
        return both.isEmpty() ? List.of() : look.typeface().wrap(both, small, columnWidth - 2);
    }

    /** Colour of a line; the lane says the same as the colour. */
    private Color flow(MapNode.Lane lane) {
        Palette palette = look.palette();
        return switch (lane) {
            case ORGANIC -> palette.amberLine();
            case AQUEOUS -> palette.skyLine();
            case OTHER -> palette.greyLine();
            case ISOLATED -> palette.greenLine();
        };
    }
}
