package workuptally.report.pdf.pictures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import workuptally.judgement.RunReview;
import workuptally.judgement.layers.LayerDecision.Outcome;
import workuptally.model.Product;
import workuptally.model.Step;
import workuptally.tally.LayerShares;

/** The steps of a run as portions and the ways between them, for one product. */
final class LayerMapGraph {
    private final LayerShares shares;
    private final List<Step> steps;
    private final List<MapNode> nodes;
    private final List<Edge> edges;

    private LayerMapGraph(LayerShares shares, List<Step> steps, List<MapNode> nodes, List<Edge> edges) {
        this.shares = shares;
        this.steps = List.copyOf(steps);
        this.nodes = List.copyOf(nodes);
        this.edges = List.copyOf(edges);
    }

    /** All portions of a run with the shares of one of its products. */
    static LayerMapGraph of(RunReview run, Product product) {
        LayerShares shares = new LayerShares(run.tally(), product);
        List<Step> steps = run.tally().run().orderedSteps().stream()
                .filter(s -> !s.from().isEmpty() && !s.gives().isEmpty())
                .toList();
        Map<String, MapNode> nodes = new LinkedHashMap<>();
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            Places places = new Places(run, shares, steps, nodes, i + 1);
            step.from().forEach(label -> places.add(label, MapNode.Lane.ORGANIC, 0));
            step.given().organic().forEach(label -> places.add(label, MapNode.Lane.ORGANIC, places.column()));
            step.given().aqueous().forEach(label -> places.add(label, MapNode.Lane.AQUEOUS, places.column()));
            step.given().other().forEach(label -> places.add(label, places.otherLane(label), places.column()));
            for (String from : step.from()) {
                for (String to : step.gives()) {
                    if (nodes.get(from).column() < nodes.get(to).column()) {
                        edges.add(new Edge(from, to));
                    }
                }
            }
        }
        return new LayerMapGraph(shares, steps, List.copyOf(nodes.values()), edges);
    }

    /** The same without portions in which nothing was found, and without the steps that then give none: for a further product of a run. */
    LayerMapGraph onlyWhereFound() {
        List<MapNode> kept =
                nodes.stream().filter(n -> drawnPercent(n.label()) > 0).toList();
        TreeSet<Integer> columns = new TreeSet<>();
        kept.forEach(n -> columns.add(n.column()));
        columns.add(0);
        List<MapNode> moved = kept.stream()
                .map(n -> n.at(
                        columns.headSet(n.column()).size(),
                        columns.headSet(n.lastColumn(), true).size() - 1))
                .toList();
        List<String> labels = moved.stream().map(MapNode::label).toList();
        return new LayerMapGraph(
                shares,
                IntStream.rangeClosed(1, steps.size())
                        .filter(columns::contains)
                        .mapToObj(c -> steps.get(c - 1))
                        .toList(),
                moved,
                edges.stream()
                        .filter(e -> labels.contains(e.from()) && labels.contains(e.to()))
                        .toList());
    }

    /** The step of each column from 1 on. */
    List<Step> steps() {
        return steps;
    }

    List<MapNode> nodes() {
        return nodes;
    }

    List<Edge> edges() {
        return edges;
    }

    Product product() {
        return shares.product();
    }

    /** True when the product was found somewhere. */
    boolean isFound() {
        return shares.isFound();
    }

    /** Share that a line to this portion is drawn with, %. */
    double drawnPercent(String label) {
        return shares.passingPercent(label);
    }

    /** Gives the portions of one step their places. */
    private record Places(RunReview run, LayerShares shares, List<Step> steps, Map<String, MapNode> nodes, int column) {
        void add(String label, MapNode.Lane lane, int at) {
            nodes.computeIfAbsent(label, l -> node(l, lane, at));
        }

        MapNode.Lane otherLane(String label) {
            return run.tally().run().lot(label).isPresent() ? MapNode.Lane.ISOLATED : MapNode.Lane.OTHER;
        }

        private MapNode node(String label, MapNode.Lane lane, int at) {
            int last = at;
            boolean consumed = false;
            for (int i = at; i < steps.size(); i++) {
                if (steps.get(i).from().contains(label)) {
                    last = i + 1;
                    consumed |= steps.get(i)
                            .operation()
                            .filter(o -> o == Step.Operation.SAMPLE)
                            .isEmpty();
                }
            }
            Optional<Outcome> outcome = run.decision(label).map(decision -> decision.outcome());
            return new MapNode(label, lane, at, last, !consumed, shares.foundPercent(label), outcome);
        }
    }

    /**
     * A way of material.
     *
     * @param from label taken
     * @param to label given
     */
    record Edge(String from, String to) {}
}
