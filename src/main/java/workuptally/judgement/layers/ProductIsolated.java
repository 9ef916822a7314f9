package workuptally.judgement.layers;

import java.util.List;
import java.util.Set;
import workuptally.judgement.layers.LayerDecision.Condition;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.LotIdentity;
import workuptally.model.Phrase;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.layers.LayerGraph;

/**
 * R2: the product of the run is isolated and identified: every lot weighed, with an assay or an entry of its identity, and none that denies it or puts it off. A crude that
 * was made into another lot is shown by that.
 */
final class ProductIsolated implements LayerCondition {

    @Override
    public Condition judge(LayerEvidence evidence) {
        List<LotTally> lots = evidence.run().lots();
        if (lots.isEmpty()) {
            return new Condition(Criterion.PRODUCT_ISOLATED, State.MISSING, Phrase.of("no isolated product recorded"));
        }
        for (LotTally lot : lots) {
            if (lot.netGrams().isEmpty()) {
                return new Condition(
                        Criterion.PRODUCT_ISOLATED,
                        State.MISSING,
                        Phrase.of("mass of lot {}", lot.lot().label()));
            }
            if (isOpen(lot)
                    && !isShownByWhatWasMadeOfIt(
                            lot, lots, LayerGraph.of(evidence.run().run()))) {
                return new Condition(
                        Criterion.PRODUCT_ISOLATED,
                        State.MISSING,
                        Phrase.of("identity of lot {}", lot.lot().label()));
            }
        }
        LotTally shown = lots.stream().filter(lot -> !isOpen(lot)).findFirst().orElse(lots.get(0));
        String label = shown.lot().label();
        String by = shown.lot().identity().by();
        return new Condition(
                Criterion.PRODUCT_ISOLATED,
                State.MET,
                Phrase.of("lot {} weighed, identified by {}", label, by.isBlank() ? Phrase.of("its assay") : by));
    }

    /** True for a crude that says nothing of its identity, all of which was made into a lot whose identity is shown: its salt, or purified. */
    private static boolean isShownByWhatWasMadeOfIt(LotTally lot, List<LotTally> lots, LayerGraph graph) {
        if (lot.lot().identity().open()) {
            return false;
        }
        Set<String> made = graph.madeFromAlone(lot.lot().label());
        return lots.stream().anyMatch(other -> made.contains(other.lot().label()) && !isOpen(other));
    }

    /** True where neither an entry nor an assay shows it, or the entry says that it is not shown. */
    private static boolean isOpen(LotTally lot) {
        LotIdentity identity = lot.lot().identity();
        return identity.open()
                || identity.by().isBlank() && lot.productFraction().isEmpty();
    }
}
