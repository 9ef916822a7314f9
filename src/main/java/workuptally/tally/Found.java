package workuptally.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Every content of a run that a balance of the workup may count: in terminal layers, aliquots, the lots at which the
 * workup ends, and layers said against the steps to be still there.
 *
 * @param terms what was found, where
 */
record Found(List<Term> terms) {
    Found {
        terms = List.copyOf(terms);
    }

    /** Collects the contents. */
    static Found in(List<LayerTally> layers, List<LotTally> lots, Map<String, List<Content>> inLots) {
        List<Term> terms = new ArrayList<>();
        for (LotTally lot : lots) {
            if (lot.endsWorkup()) {
                inLots.getOrDefault(lot.lot().label(), List.of())
                        .forEach(c -> terms.add(new Term(lot.lot().label(), c)));
            }
        }
        for (LayerTally layer : layers) {
            if (layer.counts()) {
                layer.contents().forEach(c -> terms.add(new Term(layer.label(), c)));
            }
        }
        return new Found(terms);
    }

    /**
     * One content.
     *
     * @param label lot or layer
     * @param content what it holds
     */
    record Term(String label, Content content) {}
}
