package workuptally.judgement.measurements;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import workuptally.model.Layer;
import workuptally.reference.hazards.Reactivity;
import workuptally.reference.hazards.Reactivity.Membership;
import workuptally.tally.balance.Pooling;
import workuptally.tally.layers.LayerTally;

/**
 * Which layers may stand in one composite sample: clear liquids of one phase whose contents no table knows to react with each other, not even
 * in an ordinary way, since a small vial is closed and no funnel that is vented; and of which every material is known.
 */
final class CompositeSets {
    private final Pooling ofTheRun;
    private final Reactivity reactivity;

    /**
     * Of the layers of a run.
     *
     * @param ofTheRun what may not be put together in any composite sample
     */
    CompositeSets(Pooling ofTheRun, Reactivity reactivity) {
        this.ofTheRun = ofTheRun;
        this.reactivity = reactivity;
    }

    /** True for a clear liquid with a volume. */
    static boolean isClear(LayerTally layer) {
        return layer.volumeMillilitres().isPresent()
                && layer.phase()
                        .filter(p -> p == Layer.Phase.AQUEOUS || p == Layer.Phase.ORGANIC)
                        .isPresent();
    }

    /** The largest sets of at least two layers that may stand together, in order; each layer starts one. */
    List<List<LayerTally>> sets(List<LayerTally> layers) {
        Set<List<LayerTally>> sets = new LinkedHashSet<>();
        for (LayerTally first : layers) {
            List<LayerTally> set = new ArrayList<>();
            for (LayerTally layer : layers) {
                boolean fits = layer == first
                        || mayMeet(first, layer)
                                && set.stream().allMatch(other -> other == first || mayMeet(other, layer));
                if (fits) {
                    set.add(layer);
                }
            }
            if (set.size() > 1) {
                sets.add(set);
            }
        }
        return List.copyOf(sets);
    }

    boolean mayMeet(LayerTally one, LayerTally other) {
        if (!isClear(one) || !isClear(other) || !one.phase().equals(other.phase())) {
            return false;
        }
        if (ofTheRun.whyNotTogether(one.label(), other.label()).isPresent()) {
            return false;
        }
        Map<String, Membership> first = holds(one.label());
        Map<String, Membership> second = holds(other.label());
        Set<String> classes = new LinkedHashSet<>();
        first.values().forEach(m -> classes.addAll(m.classes()));
        second.values().forEach(m -> classes.addAll(m.classes()));
        for (Map.Entry<String, Membership> a : first.entrySet()) {
            for (Map.Entry<String, Membership> b : second.entrySet()) {
                boolean react = reactivity.between(a.getValue(), b.getValue(), classes).stream()
                        .anyMatch(pair -> !pair.ofChart());
                if (!a.getKey().equals(b.getKey()) && react) {
                    return false;
                }
            }
        }
        return !first.isEmpty() && !second.isEmpty();
    }

    private Map<String, Membership> holds(String label) {
        Map<String, Membership> all = new LinkedHashMap<>();
        ofTheRun.holds(label).forEach(p -> all.put(p.name(), p.membership()));
        return all;
    }
}
