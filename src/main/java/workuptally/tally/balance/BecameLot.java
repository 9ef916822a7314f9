package workuptally.tally.balance;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import workuptally.model.Layer;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;

/**
 * Organic layers without a row that are taken to have become a lot whose origin nobody stated, as where the step that evaporated them is
 * not written: the last of them, one for each such lot. A purified lot counts only where the run has no crude, for else it came of that.
 */
public final class BecameLot {
    private final Set<String> labels;

    /** Of a run's layers and lots. */
    public BecameLot(LayerGraph graph, List<LayerTally> layers, List<LotTally> lots) {
        boolean anyCrude = lots.stream().anyMatch(LotTally::isCrude);
        int unstated = (int) lots.stream()
                .filter(l -> l.endsWorkup() && (l.isCrude() || !anyCrude))
                .map(LotTally::lot)
                .filter(lot ->
                        lot.from().isEmpty() && graph.givenBy(lot.label()).isEmpty())
                .map(lot -> lot.label())
                .distinct()
                .count();
        List<String> organic = layers.stream()
                .filter(l -> l.terminal()
                        && l.entry().isEmpty()
                        && l.phase().filter(p -> p == Layer.Phase.ORGANIC).isPresent())
                .map(LayerTally::label)
                .toList();
        this.labels =
                organic.stream().skip(Math.max(0, organic.size() - unstated)).collect(Collectors.toUnmodifiableSet());
    }

    /** True for a layer that is taken to have become one. */
    public boolean is(LayerTally layer) {
        return labels.contains(layer.label());
    }
}
