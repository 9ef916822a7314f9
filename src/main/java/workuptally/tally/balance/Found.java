package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import workuptally.tally.amounts.Content;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.layers.LayerTally;

/**
 * Every content of a run that a balance of the workup may count: in terminal layers, aliquots, the lots at which the workup ends, layers
 * said against the steps to be still there, and aliquots taken for the assays of layers that were worked up. Where no one assayed the crudes
 * of a product, the assayed lots and layers of their purification take their place.
 *
 * @param terms what was found, where
 */
public record Found(List<Term> terms) {
    public Found {
        terms = List.copyOf(terms);
    }

    /** Collects the contents. */
    public static Found in(
            List<LayerTally> layers,
            List<LotTally> lots,
            PurifiedLots purified,
            Map<String, List<Content>> inLots,
            CompositeSamples composites) {
        List<Term> terms = new ArrayList<>();
        Stream<LotTally> standIns = purified.replaced().stream()
                .map(l -> l.product())
                .distinct()
                .flatMap(p -> purified.standIns(p).stream());
        Stream.concat(lots.stream().filter(LotTally::endsWorkup), standIns)
                .map(l -> l.lot().label())
                .distinct()
                .forEach(label -> inLots.getOrDefault(label, List.of()).forEach(c -> terms.add(new Term(label, c))));
        for (LayerTally layer : layers) {
            if (layer.counts() || purified.isOfReplaced(layer)) {
                layer.contents().stream()
                        .filter(c -> !composites.cover(layer.label(), c.substance()))
                        .forEach(c -> terms.add(new Term(layer.label(), c)));
            } else if (layer.endsWorkup()) {
                layer.taken().forEach(c -> terms.add(Term.aliquot(layer.label(), c)));
            }
        }
        composites.counted().forEach(sample -> terms.add(new Term(sample.name(), sample.together())));
        return new Found(terms);
    }

    /**
     * One content.
     *
     * @param label lot or layer, or the layers of a composite sample
     * @param content what it holds
     * @param takenFrom the layer that it was taken out of as an aliquot without a label of its own; empty for lots and layers
     */
    record Term(String label, Content content, Optional<String> takenFrom) {
        Term(String label, Content content) {
            this(label, content, Optional.empty());
        }

        static Term aliquot(String layer, Content content) {
            return new Term("aliquot of " + layer, content, Optional.of(layer));
        }

        /** True for a content of one of these portions, or taken out of one. */
        boolean isOf(Collection<String> labels) {
            return labels.contains(takenFrom.orElse(label));
        }
    }
}
