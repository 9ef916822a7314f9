package workuptally.tally.balance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import workuptally.model.Lot;
import workuptally.model.Product;
import workuptally.tally.amounts.LotTally;
import workuptally.tally.layers.LayerGraph;
import workuptally.tally.layers.LayerTally;

/**
 * Lots that a purification ended in, and the crudes without an assay that they stand in for: what was purified was in the crude, so that
 * it is a place of product with a lower figure, while the loss of the purification stays unknown.
 */
public final class PurifiedLots {
    private final LayerGraph graph;
    private final List<LotTally> lots;
    private final List<LotTally> replaced;

    public PurifiedLots(LayerGraph graph, List<LotTally> lots) {
        this.graph = graph;
        this.lots = List.copyOf(lots);
        this.replaced = this.lots.stream()
                .filter(l -> l.endsWorkup() && !standIns(l.product()).isEmpty())
                .toList();
    }

    /** Lots of a product made from other lots, from which no further lot was made. */
    List<LotTally> of(Product product) {
        return ended(product.name());
    }

    /**
     * Assayed lots that take the place of the crudes of a product; empty where one of the crudes has a content of its own, which
     * would count twice, or where a purified lot has none.
     */
    List<LotTally> standIns(String product) {
        boolean noCrudeIsKnown = lots.stream()
                .filter(l -> l.isOf(product) && l.endsWorkup())
                .allMatch(l -> l.pureGrams().isEmpty());
        List<LotTally> ended = ended(product);
        boolean allAssayed = ended.stream()
                .allMatch(l -> l.pureGrams().isPresent() && l.productFraction().isPresent());
        return noCrudeIsKnown && allAssayed ? ended : List.of();
    }

    /** Crudes without an assay whose place the lots purified from them take in a balance. */
    List<LotTally> replaced() {
        return replaced;
    }

    /** True for a liquor or fraction of the purification of a crude that other lots stand in for. */
    boolean isOfReplaced(LayerTally layer) {
        if (replaced.isEmpty() || !layer.terminal() || layer.endsWorkup()) {
            return false;
        }
        Set<String> ancestors = ancestors(layer.label());
        return replaced.stream().anyMatch(l -> ancestors.contains(l.lot().label()));
    }

    private List<LotTally> ended(String product) {
        return lots.stream()
                .filter(l -> l.isOf(product) && !l.endsWorkup() && !isPart(l) && !isWorkedOn(l))
                .toList();
    }

    /** True for a part of a crude that was set aside as it was. */
    private static boolean isPart(LotTally lot) {
        return lot.lot().stage().filter(s -> s == Lot.Stage.CRUDE).isPresent();
    }

    /** True for a lot from which another lot was made; crops of a product also where a purified lot does not say where it came from. */
    private boolean isWorkedOn(LotTally lot) {
        String label = lot.lot().label();
        boolean isCrop = lot.lot().stage().filter(s -> s == Lot.Stage.CROP).isPresent();
        return lots.stream()
                .filter(l -> !l.lot().label().equals(label))
                .anyMatch(l ->
                        ancestors(l.lot().label()).contains(label) || (isCrop && isPurifiedOfUnstatedOrigin(l, lot)));
    }

    private boolean isPurifiedOfUnstatedOrigin(LotTally later, LotTally crop) {
        return later.lot().stage().filter(s -> s == Lot.Stage.PURIFIED).isPresent()
                && later.isOf(crop.product())
                && later.lot().from().isEmpty()
                && graph.givenBy(later.lot().label()).isEmpty();
    }

    private Set<String> ancestors(String label) {
        Set<String> seen = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(graph.parents(label));
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (seen.add(next)) {
                open.addAll(graph.parents(next));
            }
        }
        return seen;
    }
}
