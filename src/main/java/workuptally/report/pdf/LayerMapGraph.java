package workuptally.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import workuptally.judgement.RunReview;
import workuptally.model.Product;
import workuptally.model.Step;
import workuptally.tally.Content;
import workuptally.tally.LotTally;

/** The steps of a run as portions and the ways between them, for one product. */
final class LayerMapGraph {
    private final RunReview run;
    private final Product product;
    private final List<Step> steps;
    private final Map<String, MapNode> nodes = new LinkedHashMap<>();
    private final List<Edge> edges = new ArrayList<>();

    LayerMapGraph(RunReview run, Product product) {
        this.run = run;
        this.product = product;
        this.steps = run.tally().run().orderedSteps().stream()
                .filter(s -> !s.from().isEmpty() && !s.gives().isEmpty())
                .toList();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            for (String label : step.from()) {
                nodes.computeIfAbsent(label, l -> node(l, MapNode.Lane.ORGANIC, 0));
            }
            place(step.givesOrganic(), MapNode.Lane.ORGANIC, i + 1);
            place(step.givesAqueous(), MapNode.Lane.AQUEOUS, i + 1);
            for (String label : step.givesOther()) {
                place(List.of(label), isLot(label) ? MapNode.Lane.ISOLATED : MapNode.Lane.OTHER, i + 1);
            }
            for (String from : step.from()) {
                for (String to : step.gives()) {
                    if (nodes.get(from).column() < nodes.get(to).column()) {
                        edges.add(new Edge(from, to));
                    }
                }
            }
        }
    }

    private boolean isLot(String label) {
        return run.tally().run().lot(label).isPresent();
    }

    private void place(List<String> labels, MapNode.Lane lane, int column) {
        labels.forEach(label -> nodes.computeIfAbsent(label, l -> node(l, lane, column)));
    }

    private MapNode node(String label, MapNode.Lane lane, int column) {
        int last = column;
        boolean consumed = false;
        for (int i = column; i < steps.size(); i++) {
            if (steps.get(i).from().contains(label)) {
                last = i + 1;
                consumed |= steps.get(i)
                        .operation()
                        .filter(o -> o == Step.Operation.SAMPLE)
                        .isEmpty();
            }
        }
        String words = run.decision(label).map(d -> d.outcome().word()).orElse("");
        return new MapNode(label, lane, column, last, !consumed, share(label), words);
    }

    private OptionalDouble share(String label) {
        Optional<Content> content = run.tally().layer(label).stream()
                .flatMap(l -> l.contents().stream())
                .filter(c -> c.substance().equalsIgnoreCase(product.name()))
                .findFirst();
        if (content.isPresent()) {
            return content.get().percentOf();
        }
        return run.tally().lots().stream()
                .filter(l -> l.lot().label().equals(label))
                .filter(l -> l.lot().product().equalsIgnoreCase(product.name()))
                .map(LayerMapGraph::lotShare)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble lotShare(LotTally lot) {
        if (lot.overTheoryPercent().isEmpty() || lot.productFraction().isEmpty()) {
            return OptionalDouble.empty();
        }
        double percent = lot.overTheoryPercent().get().value();
        return OptionalDouble.of(percent * lot.productFraction().get().value());
    }

    /** The same without portions that nothing is known of: for the second and later product of a run. */
    LayerMapGraph onlyWhereFound() {
        nodes.keySet()
                .removeAll(nodes.keySet().stream()
                        .filter(l -> drawnPercent(l) == 0)
                        .toList());
        edges.removeIf(e -> !nodes.containsKey(e.from()) || !nodes.containsKey(e.to()));
        return this;
    }

    List<Step> steps() {
        return steps;
    }

    List<MapNode> nodes() {
        return List.copyOf(nodes.values());
    }

    List<Edge> edges() {
        return List.copyOf(edges);
    }

    Product product() {
        return product;
    }

    /** Share that a line to this portion is drawn with: its own, else what is known of the portions made from it. */
    double drawnPercent(String label) {
        return drawnPercent(label, new LinkedHashSet<>());
    }

    private double drawnPercent(String label, Set<String> seen) {
        MapNode node = nodes.get(label);
        if (node.sharePercent().isPresent() || !seen.add(label)) {
            return node.sharePercent().orElse(0);
        }
        double sum = 0;
        for (Edge edge : edges) {
            if (edge.from().equals(label)) {
                sum += drawnPercent(edge.to(), seen);
            }
        }
        return sum;
    }

    /**
     * A way of material.
     *
     * @param from label taken
     * @param to label given
     */
    record Edge(String from, String to) {}
}
