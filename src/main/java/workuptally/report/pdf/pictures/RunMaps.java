package workuptally.report.pdf.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import workuptally.judgement.RunReview;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.report.pdf.layout.Block;
import workuptally.report.pdf.layout.Look;
import workuptally.report.pdf.layout.PageFlow;
import workuptally.report.pdf.layout.Picture;
import workuptally.report.pdf.layout.TaggedPicture;

/**
 * The maps of a run: one of all steps for the product that leads, and for each further product that was found somewhere a small one of the
 * steps that matter to it, side by side.
 */
public final class RunMaps {
    private static final float BETWEEN = 14;

    private final Look look;
    private final RunReview run;

    public RunMaps(Look look, RunReview run) {
        this.look = look;
        this.run = run;
    }

    /** A figure per row of maps; without any assay one of the first product, to show the way of the layers. */
    public List<Block> blocks() {
        List<LayerMapGraph> graphs = run.tally().run().products().stream()
                .filter(Product::wanted)
                .map(p -> LayerMapGraph.of(run, p))
                .toList();
        if (graphs.isEmpty()) {
            return List.of();
        }
        LayerMapGraph first =
                graphs.stream().filter(LayerMapGraph::isFound).findFirst().orElse(graphs.get(0));
        LayerMap leading = LayerMap.leading(look, first, run.tally().run().status() == Run.Status.PLANNED);
        List<LayerMap> further = graphs.stream()
                .filter(g -> g != first && g.isFound())
                .map(g -> LayerMap.further(look, g))
                .filter(LayerMap::fits)
                .toList();
        List<Block> blocks = new ArrayList<>();
        if (leading.fits()) {
            blocks.add(new TaggedPicture(look, leading));
        }
        rows(further).forEach(row -> blocks.add(new TaggedPicture(look, row)));
        return blocks;
    }

    private List<Row> rows(List<LayerMap> maps) {
        List<Row> rows = new ArrayList<>();
        List<LayerMap> row = new ArrayList<>();
        float used = 0;
        for (LayerMap map : maps) {
            if (!row.isEmpty() && used + map.width() > look.widthPoints()) {
                rows.add(new Row(List.copyOf(row)));
                row.clear();
                used = 0;
            }
            row.add(map);
            used += map.width() + BETWEEN;
        }
        if (!row.isEmpty()) {
            rows.add(new Row(List.copyOf(row)));
        }
        return rows;
    }

    /** Maps side by side. */
    private record Row(List<LayerMap> maps) implements Picture {
        @Override
        public float height() {
            return (float) maps.stream().mapToDouble(LayerMap::height).max().orElse(0);
        }

        @Override
        public String alternative() {
            return maps.stream().map(LayerMap::alternative).collect(Collectors.joining(" "));
        }

        @Override
        public void draw(PageFlow flow, float left, float top) {
            float x = left;
            for (LayerMap map : maps) {
                map.draw(flow, x, top);
                x += map.width() + BETWEEN;
            }
        }
    }
}
