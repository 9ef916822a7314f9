package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import workuptally.measure.MeasuredValue;
import workuptally.model.Product;
import workuptally.model.Run;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;

/**
 * What was weighed or assayed of a product in portions that were made from one portion and from nothing else: that much at least was in it.
 *
 * <p>Counted are the lots at which the workup ends and the terminal layers. A portion that another stream joined is left out with all that
 * came of it, since the product may have come with that stream; so is everything where a quench lies between, in which product may form.
 */
public final class FoundDownstream {
    private final LayerGraph graph;
    private final List<LayerTally> layers;
    private final List<LotTally> lots;

    /**
     * Of one run.
     *
     * @param run the entries
     * @param layers its layers
     * @param lots its lots
     */
    public FoundDownstream(Run run, List<LayerTally> layers, List<LotTally> lots) {
        this.graph = LayerGraph.of(run);
        this.layers = List.copyOf(layers);
        this.lots = List.copyOf(lots);
    }

    /**
     * Sum over what was found of a product in portions made from one portion alone.
     *
     * @param label the portion
     * @param product the product
     * @return labels and g; empty where nothing of it was found there
     */
    public Optional<Amount> of(String label, Product product) {
        Set<String> made = graph.madeFromAlone(label);
        if (graph.isQuenched(Set.of(label)) || graph.isQuenched(made)) {
            return Optional.empty();
        }
        List<String> where = new ArrayList<>();
        List<MeasuredValue> found = new ArrayList<>();
        for (LotTally lot : lots) {
            if (lot.endsWorkup() && made.contains(lot.lot().label()) && lot.isOf(product.name())) {
                lot.pureGrams().ifPresent(grams -> {
                    where.add(lot.lot().label());
                    found.add(grams);
                });
            }
        }
        for (LayerTally layer : layers) {
            if (layer.terminal() && layer.endsWorkup() && made.contains(layer.label())) {
                layer.contents().stream()
                        .filter(c -> c.kind() == Content.Kind.MEASURED
                                && c.isOf(product.name())
                                && c.massGrams().isPresent())
                        .forEach(c -> {
                            where.add(layer.label());
                            found.add(c.massGrams().get());
                        });
            }
        }
        return found.stream().reduce(MeasuredValue::plus).map(sum -> new Amount(where, sum));
    }

    /**
     * What was found.
     *
     * @param labels lots and layers it was found in
     * @param grams the product in them together, g
     */
    public record Amount(List<String> labels, MeasuredValue grams) {
        public Amount {
            labels = List.copyOf(labels);
        }
    }
}
