package workuptally.report.pdf.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import workuptally.judgement.RunReview;
import workuptally.report.pdf.InventedReviews;

/** The invented demo week: the way of the layers as its Workup table has it. */
class LayerMapGraphTest {
    private final LayerMapGraph graph;

    LayerMapGraphTest() throws IOException {
        RunReview run = InventedReviews.demoWeek().runs().stream()
                .filter(r -> r.id().equals("R26-050"))
                .findFirst()
                .orElseThrow();
        graph = LayerMapGraph.of(run, run.tally().run().products().get(0));
    }

    private MapNode node(String label) {
        return graph.nodes().stream()
                .filter(n -> n.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void loadsOfOneWashStandInOneColumnOfTheAqueousLane() {
        assertEquals(node("A1a").column(), node("A1b").column());
        assertEquals(MapNode.Lane.AQUEOUS, node("A1c").lane());
        assertTrue(node("A1c").terminal());
        assertFalse(node("O1").terminal());
    }

    @Test
    void crudeLotStandsInTheIsolatedLane() {
        assertEquals(MapNode.Lane.ISOLATED, node("CR1").lane());
    }

    @Test
    void stretchWithoutAssayIsDrawnWithWhatWasFoundAfterIt() {
        double found = node("CR1").sharePercent().orElseThrow();
        double washed = node("A2").sharePercent().orElseThrow()
                + node("A3").sharePercent().orElseThrow();
        assertEquals(found, graph.drawnPercent("O5"), 1e-9);
        assertEquals(found + washed, graph.drawnPercent("O1"), 1e-9);
    }

    @Test
    void everyWayLeadsToALaterStep() {
        assertFalse(graph.edges().isEmpty());
        for (LayerMapGraph.Edge edge : graph.edges()) {
            assertTrue(node(edge.from()).column() < node(edge.to()).column(), edge.toString());
        }
    }
}
